import { useRef, useState, type KeyboardEvent } from "react";
import { useApp } from "../app-context.tsx";
import { whyNot, type Command } from "../commands/command.ts";
import { commandsFor } from "../commands/index.ts";
import { keysText } from "../commands/keys.ts";
import { IS_MAC } from "../is-mac.ts";
import type { EditorState } from "../store/editor-state.ts";
import { useWords } from "../use-words.ts";
import { Dialog } from "./Dialog.tsx";

const MOST_SHOWN = 60;

/** Everything that can be done, found by typing. What can't be done now is greyed with its reason. */
export function CommandBox() {
  const { editor, runner } = useApp();
  const [sought, setSought] = useState("");
  const box = useRef<HTMLDivElement>(null);
  const found = findCommands(commandsFor(editor.state), sought, editor.state).slice(0, MOST_SHOWN);

  const run = (command: Command | undefined) => {
    if (command === undefined) return;
    const reason = whyNot(command, editor.state);
    if (reason !== null) return editor.say(reason);
    editor.show(null);
    runner.run(command.id);
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
          aria-label="What do you want to do?"
          placeholder="What do you want to do?"
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
        <ul className="command-list" aria-label="Commands">
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

/**
 * Commands whose title, group or other words hold every word typed: those with the words in the title first, and of these those
 * that can be done.
 */
function findCommands(commands: readonly Command[], sought: string, state: EditorState): readonly Command[] {
  const wanted = sought.toLowerCase().split(/\s+/).filter(Boolean);
  const holds = (text: string) => wanted.every((word) => text.toLowerCase().includes(word));
  const rank = (command: Command) => (holds(command.title) ? 0 : 2) + (whyNot(command, state) === null ? 0 : 1);
  return commands
    .filter(
      (command) =>
        command.id !== "show command-box" && holds(`${command.title} ${command.group} ${command.words ?? ""}`),
    )
    .toSorted((a, b) => rank(a) - rank(b));
}
