/** Why a file can't be used: which key, what was got, what was wanted. One line, at most 300 characters. */
export class Refusal extends Error {}

const MOST_LINE = 300;
const MOST_QUOTED = 60;

/** A refusal that reads "parts[3].props.ratingA: got -5, wanted a number from 0.1 to 1000". `key` empty: the whole file. */
export function refuse(key: string, got: string, wanted: string): Refusal {
  const where = key === "" ? "the file" : clip(key, 120);
  return new Refusal(clip(`${where}: got ${got}, wanted ${wanted}`, MOST_LINE));
}

/** A value as it is quoted in a refusal: at most 60 characters, on one line. */
export function quote(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "number") return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return "an object";
  const text = oneLine(JSON.stringify(value));
  return text.length <= MOST_QUOTED ? text : `${text.slice(0, MOST_QUOTED - 2)}…"`;
}

/** A key as a file has it, as one step of the path a refusal names. */
export function step(key: string): string {
  return clip(key, MOST_QUOTED);
}

function clip(text: string, most: number): string {
  const line = oneLine(text);
  return line.length <= most ? line : `${line.slice(0, most - 1)}…`;
}

/** Without what a terminal would obey. */
function oneLine(text: string): string {
  return text.replaceAll(/[\s\p{Cc}\p{Cf}]+/gu, " ");
}
