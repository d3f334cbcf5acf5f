import { formatNumber, NUMBER_PATTERN, parseNumber } from "./number.ts";
import { accepted, refused, type Typed } from "./typed.ts";

/** Which units a person reads first. */
export type UnitSystem = "metric" | "us";

/** Exact by definition: international inch, 1959. */
const INCH_M = 0.0254;
const FOOT_M = 12 * INCH_M;

const METRES_PER: Readonly<Record<string, number>> = {
  m: 1,
  metre: 1,
  metres: 1,
  meter: 1,
  meters: 1,
  cm: 0.01,
  mm: 0.001,
  ft: FOOT_M,
  foot: FOOT_M,
  feet: FOOT_M,
  "'": FOOT_M,
  "′": FOOT_M,
  "’": FOOT_M,
  in: INCH_M,
  inch: INCH_M,
  inches: INCH_M,
  '"': INCH_M,
  "″": INCH_M,
  "”": INCH_M,
};

const WANTED = "a length, like 2.3 m, 230 cm, 7.5 ft or 7 ft 6 in";
/** A number, a number and a fraction ("6 1/2"), or a fraction alone, with its unit; a last unit may be missing. */
const PIECE = new RegExp(`^\\s*(?:(${NUMBER_PATTERN})(?!\\d*/)\\s*)?(?:(\\d+)/(\\d+)\\s*)?([a-z]+|['"′″’”])?\\s*`, "i");

/**
 * Reads a length in metres: "2.3 m", "230 cm", "7 ft 6 in", "7.5 ft", "90in", `7' 6 1/2"`. A bare number is metres where
 * `system` is metric, feet where it is us; a bare number after feet is inches.
 * Rounded to a micrometre, so that feet and centimetres come out whole.
 * No answer: negative lengths, unknown units and pieces out of order ("6 in 7 ft") are refused.
 */
export function parseLengthM(text: string, system: UnitSystem = "metric"): Typed<number> {
  let rest = text.trim();
  let totalM = 0;
  let previousM = Number.POSITIVE_INFINITY;
  while (rest !== "") {
    const piece = readPiece(rest);
    if (!piece) return refused(text, WANTED);
    const unitM = piece.unitM ?? bareUnitM(previousM, system);
    if (unitM === null || unitM >= previousM || piece.count < 0) return refused(text, WANTED);
    totalM += piece.count * unitM;
    previousM = unitM;
    rest = rest.slice(piece.length);
  }
  return previousM === Number.POSITIVE_INFINITY ? refused(text, WANTED) : accepted(Number(totalM.toFixed(6)));
}

/**
 * A length for people to read, both ways, their own first: "0.15 m (6 in)", "7 ft 7 in (2.3 m)". Feet and inches to the
 * nearest half inch below 2 ft, else the nearest inch. `null` reads "unknown".
 */
export function formatLength(lengthM: number | null, system: UnitSystem = "metric"): string {
  if (lengthM === null) return "unknown";
  const metric = `${formatNumber(lengthM)} m`;
  const us = feetAndInches(lengthM);
  return system === "metric" ? `${metric} (${us})` : `${us} (${metric})`;
}

function feetAndInches(lengthM: number): string {
  const inches = lengthM / INCH_M;
  if (inches < 24) return `${formatNumber(Math.round(inches * 2) / 2)} in`;
  const whole = Math.round(inches);
  const left = whole % 12;
  return `${Math.floor(whole / 12)} ft${left === 0 ? "" : ` ${left} in`}`;
}

function bareUnitM(previousM: number, system: UnitSystem): number | null {
  if (previousM === Number.POSITIVE_INFINITY) return system === "us" ? FOOT_M : 1;
  return previousM === FOOT_M ? INCH_M : null;
}

function readPiece(text: string): { count: number; unitM: number | null; length: number } | null {
  const match = PIECE.exec(text);
  if (!match || match[0] === "" || (match[1] === undefined && match[2] === undefined)) return null;
  const whole = match[1] === undefined ? accepted(0) : parseNumber(match[1]);
  if (!whole.ok) return null;
  const fraction = match[2] === undefined ? 0 : Number(match[2]) / Number(match[3]);
  const unit = match[4]?.toLowerCase();
  const unitM = unit === undefined ? null : METRES_PER[unit];
  if (unitM === undefined || !Number.isFinite(fraction)) return null;
  return { count: whole.value + fraction, unitM, length: match[0].length };
}
