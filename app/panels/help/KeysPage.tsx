import { COMMANDS } from "../../commands/index.ts";
import type { CommandGroup } from "../../commands/command.ts";
import { keysText } from "../../commands/keys.ts";
import { IS_MAC } from "../../is-mac.ts";

/** Every key, from the one list of commands. */
export function KeysPage() {
  const withKeys = COMMANDS.filter((command) => command.keys !== undefined);
  const groups = [...new Set(withKeys.map((command): CommandGroup => command.group))];
  return (
    <>
      <p>
        Tab walks through the page. In the outline of the drawing the arrow keys walk over parts, terminals and wires,
        Enter selects, and with Shift they move the part. The number keys operate the first nine controls.
      </p>
      {groups.map((group) => (
        <section key={group}>
          <h4>{group}</h4>
          <dl className="keys">
            {withKeys
              .filter((command) => command.group === group)
              .map((command) => (
                <div key={command.id}>
                  <dt>
                    {command.keys!.map((keys) => (
                      <kbd key={keys}>{keysText(keys, IS_MAC)}</kbd>
                    ))}
                  </dt>
                  <dd>{command.title}</dd>
                </div>
              ))}
          </dl>
        </section>
      ))}
    </>
  );
}
