import { formatNumber, NUMBER_PATTERN, parseNumber } from "./number.ts";
import { accepted, refused, type Typed } from "./typed.ts";

/** Units a value may be kept in. "ohm" and "mohm" are both resistance; "" is a bare number. */
export type Unit = "V" | "A" | "W" | "ohm" | "mohm" | "Ah" | "s" | "mm2" | "degC" | "";

interface UnitWriting {
  /** As people read it. */
  readonly symbol: string;
  /** How many of the kept unit one of what was typed is, by its spelling in lower case. Prefixes come on top where `prefixes`. */
  readonly spellings: Readonly<Record<string, number>>;
  readonly prefixes: boolean;
}

const RESISTANCE = ["ohm", "ohms", "ω", "r"];

const WRITINGS: Readonly<Record<Unit, UnitWriting>> = {
  V: { symbol: "V", spellings: { v: 1, volt: 1, volts: 1 }, prefixes: true },
  A: { symbol: "A", spellings: { a: 1, amp: 1, amps: 1, ampere: 1, amperes: 1 }, prefixes: true },
  W: { symbol: "W", spellings: { w: 1, watt: 1, watts: 1 }, prefixes: true },
  ohm: { symbol: "Ω", spellings: spelled(RESISTANCE, 1), prefixes: true },
  mohm: { symbol: "mΩ", spellings: { ...spelled(RESISTANCE, 1000), milliohm: 1, milliohms: 1 }, prefixes: true },
  Ah: { symbol: "Ah", spellings: { ah: 1 }, prefixes: true },
  s: {
    symbol: "s",
    spellings: { s: 1, sec: 1, secs: 1, second: 1, seconds: 1, ms: 0.001, min: 60, minutes: 60, h: 3600, hours: 3600 },
    prefixes: false,
  },
  mm2: { symbol: "mm²", spellings: { mm2: 1, "mm²": 1, "mm^2": 1, sqmm: 1 }, prefixes: false },
  degC: { symbol: "°C", spellings: { c: 1, "°c": 1, degc: 1, "°": 1 }, prefixes: false },
  "": { symbol: "", spellings: {}, prefixes: false },
};

/** Case matters: "m" is milli, "M" mega. */
const PREFIXES: Readonly<Record<string, number>> = { u: 1e-6, µ: 1e-6, μ: 1e-6, m: 1e-3, k: 1e3, K: 1e3, M: 1e6 };
const TYPED = new RegExp(`^(${NUMBER_PATTERN})\\s*(.*)$`);

/** The unit as people read it: "Ω", "mm²", "°C". */
export function unitSymbol(unit: Unit): string {
  return WRITINGS[unit].symbol;
}

/**
 * Reads a number with an optional unit into `unit`: "8 A", "300 mA", "4,7k" and "0.5 ohm" (500 in a "mohm" field).
 * A bare number is taken in `unit` itself. Degrees Fahrenheit ("104 F") are converted to °C.
 * No answer: another unit or no number is refused, with what was wanted.
 */
export function parseQuantity(text: string, unit: Unit): Typed<number> {
  const match = TYPED.exec(text.trim());
  const number = match && parseNumber(match[1] ?? "");
  const wanted = `a number${unit === "" ? "" : ` in ${unitSymbol(unit)}`}`;
  if (!number) return refused(text, wanted);
  if (!number.ok) return number;
  const spelling = (match[2] ?? "").trim();
  if (unit === "degC" && /^(°|deg)?\s*f$/i.test(spelling)) return accepted(((number.value - 32) * 5) / 9);
  const factor = factorOf(spelling, unit);
  return factor === null ? refused(text, wanted) : accepted(number.value * factor);
}

/**
 * A quantity for people to read, three significant digits: "8.31 A", "12.6 V", "50 mV". V, A and W below 0.1 and ohms below 1
 * are shown in thousandths; `null` reads "unknown".
 */
export function formatQuantity(value: number | null, unit: Unit, digits = 3): string {
  if (value === null) return "unknown";
  if (unit === "mohm" && Math.abs(value) >= 1000) return formatQuantity(value / 1000, "ohm", digits);
  const size = Math.abs(value);
  const small = unit === "ohm" ? size < 1 : (unit === "V" || unit === "A" || unit === "W") && size < 0.1;
  if (small && size >= 5e-7) return `${formatNumber(value * 1000, digits)} m${unitSymbol(unit)}`;
  return `${formatNumber(small ? 0 : value, digits)} ${unitSymbol(unit)}`.trimEnd();
}

/** Kept units per one of `spelling`; `null` when it is no spelling of this unit. */
function factorOf(spelling: string, unit: Unit): number | null {
  if (spelling === "") return 1;
  const { spellings, prefixes } = WRITINGS[unit];
  const plain = spellings[spelling.toLowerCase()];
  if (plain !== undefined) return plain;
  if (!prefixes) return null;
  const prefix = PREFIXES[spelling.charAt(0)];
  if (prefix === undefined) return null;
  const rest = spelling.slice(1).trim().toLowerCase();
  if (rest === "") return unit === "mohm" ? null : prefix;
  const base = spellings[rest];
  return base === undefined ? null : base * prefix;
}

function spelled(names: readonly string[], factor: number): Record<string, number> {
  return Object.fromEntries(names.map((name) => [name, factor]));
}
