import type { Cover, Part } from "../../../core/document/index.ts";
import { formatQuantity } from "../../../core/units/index.ts";
import { useApp, useDrawing, useEditor } from "../../app-context.tsx";
import { viewOf } from "../../store/part-view.ts";
import { standingWords } from "../../store/standing-words.ts";
import { useWords } from "../../use-words.ts";
import { TerminalMark } from "../TerminalMark.tsx";

const COVERS: readonly (readonly [Cover, string])[] = [
  ["bare", "bare metal"],
  ["covered", "covered"],
  ["cavity", "empty cavity"],
];

/** Every terminal of a part: what it is, how it stands, what covers it, and a wire to start there. */
export function TerminalTable({ part }: { readonly part: Part }) {
  return (
    <ul className="terminals">
      {viewOf(part).terminals.map((terminal) => (
        <TerminalRow
          key={terminal.name}
          part={part}
          name={terminal.name}
          about={terminal.about}
          usual={terminal.cover}
        />
      ))}
    </ul>
  );
}

interface RowProps {
  readonly part: Part;
  readonly name: string;
  readonly about: string;
  readonly usual: { readonly wired: Cover; readonly unwired: Cover };
}

function TerminalRow({ part, name, about, usual }: RowProps) {
  const { editor } = useApp();
  const drawing = useDrawing();
  const words = useWords();
  const address = `${part.id}.${name}`;
  const standing = useEditor((state) => state.report?.terminals[address]);
  const volts = useEditor((state) => state.present?.terminals[address]?.volts);
  const isWired = drawing.wires.some((wire) => wire.from === address || wire.to === address);
  const usualCover = COVERS.find(([cover]) => cover === (isWired ? usual.wired : usual.unwired))![1];
  return (
    <li className="terminal-row">
      <span className="terminal-name">{name}</span>
      <span className="terminal-about">{words(about)}</span>
      <span className="terminal-volts">
        {volts === undefined ? "" : volts === null ? "on no network" : formatQuantity(volts, "V")}
      </span>
      <span className="terminal-standing">
        <TerminalMark standing={standing} /> {standingWords(standing)}
      </span>
      <select
        aria-label={`Cover of terminal ${name}`}
        value={part.covers?.[name] ?? ""}
        onChange={(event) =>
          editor.dispatch({
            label: `Cover of terminal ${name} of ${part.id.toUpperCase()}`,
            edits: [
              { op: "set-cover", terminal: address, cover: (event.target.value || undefined) as Cover | undefined },
            ],
          })
        }
      >
        <option value="">{usualCover}, as usual</option>
        {COVERS.map(([cover, label]) => (
          <option key={cover} value={cover}>
            {label}
          </option>
        ))}
      </select>
      <button
        type="button"
        onClick={() => {
          editor.set({ wireFrom: address });
          editor.show("wire-to");
        }}
      >
        Wire from {name}
      </button>
    </li>
  );
}
