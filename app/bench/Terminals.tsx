import type { Cover } from "../../core/document/index.ts";
import type { Point } from "../../core/geometry/index.ts";
import type { Fixing } from "../../core/parts/index.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { TextField } from "../fields/TextField.tsx";
import { withTerminalNamed } from "./behaviour.ts";
import { press, takePen, without } from "./drawing-hand.ts";
import type { BenchSymbol, BenchTerminal } from "./symbol.ts";

interface Props {
  readonly symbol: BenchSymbol;
  readonly onChange: (symbol: BenchSymbol) => void;
}

const SIDES = [
  { value: "left", label: "Left" },
  { value: "right", label: "Right" },
  { value: "up", label: "Up" },
  { value: "down", label: "Down" },
];
const COVERS = [
  { value: "covered", label: "Covered" },
  { value: "bare", label: "Bare metal" },
  { value: "cavity", label: "Empty cavity" },
];
const FIXINGS = [
  { value: "lead", label: "A lead of its own" },
  { value: "tab", label: "Push-on tab" },
  { value: "stud", label: "Stud" },
  { value: "ground-screw", label: "Ground screw" },
  { value: "contact", label: "Contact of a plug" },
  { value: "joint", label: "Joint" },
];

/** Where wires go: each terminal's name, side, cover and fixing. */
export function Terminals({ symbol, onChange }: Props) {
  const add = () => onChange(press(takePen("terminal"), symbol, freePlace(symbol)).symbol);
  return (
    <section className="bench-group" aria-label="Terminals">
      <h3>Terminals</h3>
      {symbol.terminals.length === 0 && (
        <p className="quiet">None yet. Take the Terminal pen and press where a wire goes, or add one here.</p>
      )}
      <ol className="bench-list">
        {symbol.terminals.map((terminal, index) => (
          <li key={index} aria-label={`Terminal ${terminal.name}`}>
            <TerminalFields symbol={symbol} index={index} terminal={terminal} onChange={onChange} />
          </li>
        ))}
      </ol>
      <p className="row-buttons">
        <button type="button" onClick={add}>
          Add a terminal
        </button>
      </p>
    </section>
  );
}

interface FieldsProps extends Props {
  readonly index: number;
  readonly terminal: BenchTerminal;
}

function TerminalFields({ symbol, index, terminal, onChange }: FieldsProps) {
  const set = (change: Partial<BenchTerminal>) =>
    onChange({ ...symbol, terminals: symbol.terminals.map((one, at) => (at === index ? { ...one, ...change } : one)) });
  const rename = (name: string): string | null => {
    if (!/^[A-Za-z0-9+_-]{1,16}$/.test(name))
      return `Got "${name.slice(0, 20)}", wanted 1 to 16 letters, digits, +, - or _`;
    if (symbol.terminals.some((one, at) => at !== index && one.name === name))
      return `There is a terminal ${name} already`;
    onChange(withTerminalNamed(symbol, index, name));
    return null;
  };
  return (
    <>
      <TextField label="Name" value={terminal.name} help="As marked on the real part." onCommit={rename} />
      <ChoiceField
        label="Wire leaves"
        value={terminal.exit}
        options={SIDES}
        onCommit={(exit) => set({ exit: exit as BenchTerminal["exit"] })}
      />
      <details>
        <summary>Place, cover and fixing</summary>
        <div className="bench-more">
          <TerminalMore terminal={terminal} onChange={set} />
        </div>
      </details>
      <p className="row-buttons">
        <button type="button" onClick={() => onChange(without(symbol, { piece: "terminal", index }))}>
          Remove
        </button>
      </p>
    </>
  );
}

interface MoreProps {
  readonly terminal: BenchTerminal;
  readonly onChange: (change: Partial<BenchTerminal>) => void;
}

function TerminalMore({ terminal, onChange }: MoreProps) {
  const [x, y] = terminal.at;
  const move = (typed: string, to: (value: number) => Point): string | null => {
    const value = Number(typed);
    if (typed === "" || !Number.isInteger(value) || Math.abs(value) > 50)
      return `Got "${typed.slice(0, 20)}", wanted a whole number from -50 to 50`;
    onChange({ at: to(value) });
    return null;
  };
  return (
    <>
      <TextField label="Across" value={`${x}`} help="Grid steps." onCommit={(typed) => move(typed, (to) => [to, y])} />
      <TextField label="Down" value={`${y}`} help="Grid steps." onCommit={(typed) => move(typed, (to) => [x, to])} />
      <ChoiceField
        label="With a wire"
        value={terminal.wired ?? "covered"}
        options={COVERS}
        onCommit={(wired) => onChange({ wired: wired as Cover })}
      />
      <ChoiceField
        label="Without one"
        value={terminal.unwired ?? "bare"}
        options={COVERS}
        onCommit={(unwired) => onChange({ unwired: unwired as Cover })}
      />
      <ChoiceField
        label="Made fast to"
        value={terminal.fixing ?? "lead"}
        options={FIXINGS}
        onCommit={(fixing) => onChange({ fixing: fixing as Fixing })}
      />
      <TextField
        label="What it is"
        value={terminal.about ?? ""}
        placeholder="in words"
        onCommit={(about) => {
          if (about.length > 120) return `Got ${about.length} letters, wanted up to 120`;
          onChange({ about });
          return null;
        }}
      />
    </>
  );
}

/** Left and right of the usual box, row by row. */
function freePlace({ terminals }: BenchSymbol): Point {
  for (let row = 0; ; row += 2) {
    const spots: readonly Point[] = [
      [0, row],
      [6, row],
    ];
    const free = spots.find(([x, y]) => !terminals.some(({ at }) => at[0] === x && at[1] === y));
    if (free !== undefined) return free;
  }
}
