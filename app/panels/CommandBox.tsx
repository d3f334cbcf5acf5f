import { useRef, useState, type KeyboardEvent } from "react";
import { useApp } from "../app-context.tsx";
import { whyNot, type Command } from "../commands/command.ts";
import { findAnything } from "../commands/find-anything.ts";
import { keysText } from "../commands/keys.ts";
import { IS_MAC } from "../is-mac.ts";
import { useWords } from "../use-words.ts";
import { Dialog } from "./Dialog.tsx";

const MOST_SHOWN = 60;

/** Everything that can be done and everything on the Board, found by typing. What can't be done now is greyed with its reason. */
export function CommandBox() {
  const { editor, runner } = useApp();
  const [sought, setSought] = useState("");
  const box = useRef<HTMLDivElement>(null);
  const found = findAnything(editor.state, sought).slice(0, MOST_SHOWN);

  const run = (command: Command | undefined) => {
    if (command === undefined) return;
    const reason = whyNot(command, editor.state);
    if (reason !== null) return editor.say(reason);
    editor.show(null);
    runner.carryOut(command.plan(editor.state));
  };
  /** The arrows walk from the field down the list and back. */
  const walk = (event: KeyboardEvent) => {
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    const stops = [...(box.current?.querySelectorAll<HTMLElement>("input, button") ?? [])];
    const now = stops.indexOf(document.activeElement as HTMLElement);
    stops[(now + step + stops.length) % stops.length]?.focus();
  };

  return (
    <Dialog title="Find anything" className="command-box">
      <div ref={box}>
        <input
          className="command-search"
          type="text"
          aria-label="What do you want to do, or find?"
          placeholder="Do or find: fit fuse, papers, K1 87, awning"
          autoComplete="off"
          data-first-focus
          value={sought}
          onChange={(event) => setSought(event.target.value)}
          onKeyDown={(event) => {
            if (event.key !== "Enter") return walk(event);
            // What the command brings the focus to must not be pressed by the same key.
            event.preventDefault();
            run(found[0]);
          }}
        />
        <ul className="command-list" aria-label="Found">
          {found.map((command) => (
            <li key={command.id}>
              <CommandRow command={command} onRun={() => run(command)} onKeyDown={walk} />
            </li>
          ))}
        </ul>
      </div>
      {found.length === 0 && <p className="quiet">Nothing by that word.</p>}
    </Dialog>
  );
}

interface RowProps {
  readonly command: Command;
  readonly onRun: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

function CommandRow({ command, onRun, onKeyDown }: RowProps) {
  const { editor } = useApp();
  const words = useWords();
  const reason = whyNot(command, editor.state);
  return (
    <button type="button" aria-disabled={reason !== null} onClick={onRun} onKeyDown={onKeyDown}>
      <span className="command-title">{words(command.title)}</span>
      <span className="command-group">{reason ?? command.group}</span>
      {command.keys?.[0] && <kbd>{keysText(command.keys[0], IS_MAC)}</kbd>}
    </button>
  );
}
