import { useId, useState, type KeyboardEvent } from "react";
import { useApp } from "../app-context.tsx";
import { reasonOf, type Command } from "../commands/command.ts";
import { commandsFor } from "../commands/index.ts";
import { keysText } from "../commands/keys.ts";
import { IS_MAC } from "../is-mac.ts";
import { useWords } from "../use-words.ts";
import { Dialog } from "./Dialog.tsx";

const MOST_SHOWN = 60;

/** Everything that can be done, found by typing. What can't be done now is greyed with its reason. */
export function CommandBox() {
  const { editor, runner } = useApp();
  const [sought, setSought] = useState("");
  const [at, setAt] = useState(0);
  const list = useId();
  const words = useWords();
  const found = findCommands(commandsFor(editor.state), sought).slice(0, MOST_SHOWN);
  const chosen = Math.min(at, found.length - 1);

  const run = (command: Command) => {
    const plan = command.plan(editor.state);
    if (reasonOf(plan) !== null) return editor.say(reasonOf(plan)!);
    editor.show(null);
    runner.run(command.id);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step !== 0) {
      event.preventDefault();
      setAt((chosen + step + found.length) % Math.max(1, found.length));
    }
    if (event.key === "Enter" && found[chosen] !== undefined) run(found[chosen]);
  };

  return (
    <Dialog title="Find anything" className="command-box">
      <input
        className="command-search"
        type="text"
        role="combobox"
        aria-expanded="true"
        aria-controls={list}
        aria-activedescendant={found[chosen] ? `${list}-${chosen}` : undefined}
        aria-label="What do you want to do?"
        placeholder="What do you want to do?"
        autoComplete="off"
        data-first-focus
        value={sought}
        onChange={(event) => {
          setSought(event.target.value);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
      />
      <ul id={list} className="command-list" role="listbox" aria-label="Commands">
        {found.map((command, index) => {
          const reason = reasonOf(command.plan(editor.state));
          return (
            <li
              key={command.id}
              id={`${list}-${index}`}
              role="option"
              aria-selected={index === chosen}
              aria-disabled={reason !== null}
              ref={(item) => {
                if (index === chosen) item?.scrollIntoView({ block: "nearest" });
              }}
              onClick={() => run(command)}
              onPointerMove={() => setAt(index)}
            >
              <span className="command-title">{words(command.title)}</span>
              <span className="command-group">{reason ?? command.group}</span>
              {command.keys?.[0] && <kbd>{keysText(command.keys[0], IS_MAC)}</kbd>}
            </li>
          );
        })}
      </ul>
      {found.length === 0 && <p className="quiet">Nothing by that word.</p>}
    </Dialog>
  );
}

/** Commands whose title, group or other words hold every word typed; those with the words in the title first. */
function findCommands(commands: readonly Command[], sought: string): readonly Command[] {
  const wanted = sought.toLowerCase().split(/\s+/).filter(Boolean);
  const holds = (text: string) => wanted.every((word) => text.toLowerCase().includes(word));
  const rank = (command: Command) => (holds(command.title) ? 0 : 1);
  return commands
    .filter((command) => holds(`${command.title} ${command.group} ${command.words ?? ""}`))
    .toSorted((a, b) => rank(a) - rank(b));
}
