import { FlagField } from "../fields/FlagField.tsx";
import { TextField } from "../fields/TextField.tsx";
import { withPositions } from "./behaviour.ts";
import type { BenchSymbol } from "./symbol.ts";

interface Props {
  readonly symbol: BenchSymbol;
  readonly onChange: (symbol: BenchSymbol) => void;
}

/** What a person operates on it: positions, off first. */
export function BenchControl({ symbol, onChange }: Props) {
  const set = (typed: string): string | null => {
    const words = typed.split(/[\s,]+/).filter((word) => word !== "" && word !== "off");
    const wrong = words.find((word) => !/^[A-Za-z0-9+_-]{1,16}$/.test(word));
    if (wrong !== undefined) return `Got "${wrong.slice(0, 20)}", wanted short words parted by commas`;
    const positions = [...new Set(words)];
    if (positions.length > 11) return `Got ${positions.length} positions, wanted up to 11 besides off`;
    onChange(withPositions(symbol, positions.length === 0 ? [] : ["off", ...positions]));
    return null;
  };
  return (
    <section className="bench-group" aria-label="Control">
      <h3>Control</h3>
      <TextField
        label="Positions"
        value={symbol.positions.slice(1).join(", ")}
        placeholder="none"
        help="Besides off: on, or low, high. They stand among the Controls."
        onCommit={set}
      />
      {symbol.positions.length > 0 && (
        <FlagField
          label="Springs back to off"
          value={symbol.momentary}
          onCommit={(momentary) => onChange({ ...symbol, momentary })}
        />
      )}
    </section>
  );
}
