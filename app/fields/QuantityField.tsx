import { formatQuantity, parseQuantity, typedErrorText, unitSymbol, type Unit } from "../../core/units/index.ts";
import { TextField } from "./TextField.tsx";

interface Props {
  readonly label: string;
  /** `undefined`: nothing said. */
  readonly value: number | null | undefined;
  readonly unit: Unit;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly isWhole?: boolean;
  /** What holds while nothing is said: "12.6 V", "not said". */
  readonly usual: string;
  /** `null` may be said on purpose; the word for it. */
  readonly noneWord?: string;
  readonly help?: string | undefined;
  /** `undefined`: back to nothing said. */
  readonly onCommit: (value: number | null | undefined) => void;
}

/** A number with its unit. Emptied, it is back to what holds when nothing is said. */
export function QuantityField({ label, value, unit, min, max, isWhole, usual, noneWord, help, onCommit }: Props) {
  const read = (text: string): string | null => {
    if (text === "") {
      onCommit(undefined);
      return null;
    }
    if (noneWord !== undefined && text.toLowerCase() === noneWord) {
      onCommit(null);
      return null;
    }
    const typed = parseQuantity(text, unit);
    if (!typed.ok) return typedErrorText(typed);
    const wrong =
      outside(typed.value, unit, min, max) ??
      (isWhole && !Number.isInteger(typed.value) ? `Got ${text}, wanted a whole number` : null);
    if (wrong === null) onCommit(typed.value);
    return wrong;
  };
  const shown = value === undefined ? "" : value === null ? (noneWord ?? "") : plain(value, unit);
  return <TextField label={label} value={shown} placeholder={usual} help={help} onCommit={read} />;
}

function outside(value: number, unit: Unit, min = -Infinity, max = Infinity): string | null {
  if (value >= min && value <= max) return null;
  const got = plain(value, unit);
  if (max === Infinity) return `Got ${got}, wanted ${plain(min, unit)} or more`;
  return `Got ${got}, wanted ${plain(min, unit)} to ${plain(max, unit)}`;
}

/** Every digit that was given, so that editing never rounds. */
function plain(value: number, unit: Unit): string {
  return `${value} ${unitSymbol(unit)}`.trimEnd();
}

/** What holds while nothing is said, in words. */
export function usualText(fallback: unknown, unit: Unit, follows?: string): string {
  if (follows !== undefined) return follows;
  return typeof fallback === "number" ? `${formatQuantity(fallback, unit)}, usual` : "not said";
}
