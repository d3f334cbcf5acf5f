import { parseNumber } from "../units/index.ts";
import { awgAreaMm2 } from "./awg.ts";
import type { ReferenceTable } from "./reference-table.ts";

export interface Barrel {
  readonly colour: "red" | "blue" | "yellow";
  /** As stamped on the box. */
  readonly awg: string;
  /** Copper of all wires in it together, mm². */
  readonly fromMm2: number;
  readonly toMm2: number;
}

/** Insulated crimp barrels, smallest first. Each begins at its smallest wire in either system and ends at its largest. */
export const barrels: readonly Barrel[] = [
  { colour: "red", awg: "22-16", fromMm2: awgAreaMm2(22), toMm2: 1.5 },
  { colour: "blue", awg: "16-14", fromMm2: awgAreaMm2(16), toMm2: 2.5 },
  { colour: "yellow", awg: "12-10", fromMm2: 2.5, toMm2: 6 },
];

const RANGE = /^([\d.,]+)\s*(?:-|–|to)\s*([\d.,]+)\s*(?:mm2|mm²)?$/;

/** Smallest insulated barrel for this much copper; `null` when it is too thin or too thick for all three. */
export function barrelFor(totalMm2: number): Barrel | null {
  return barrels.find((barrel) => within(totalMm2, barrel.fromMm2, barrel.toMm2)) ?? null;
}

/**
 * Whether all wires of a crimp, `totalMm2` of copper together, fit a barrel named "red", "blue", "yellow" or by its range
 * ("10-16 mm2"). No answer: `null` for a barrel named otherwise.
 */
export function barrelFits(barrel: string, totalMm2: number): boolean | null {
  const coloured = barrels.find(({ colour }) => colour === barrel.trim().toLowerCase());
  if (coloured) return within(totalMm2, coloured.fromMm2, coloured.toMm2);
  const [, from = "", to = ""] = RANGE.exec(barrel.trim()) ?? [];
  const low = parseNumber(from);
  const high = parseNumber(to);
  return low.ok && high.ok ? within(totalMm2, low.value, high.value) : null;
}

export const barrelsTable: ReferenceTable = {
  id: "barrels",
  title: "Insulated crimp barrels",
  unit: "mm2",
  source: "terminal makers' pages (trade convention, red, blue, yellow); wires together by summed copper area",
  edition: null,
  range:
    "stranded copper; makers differ on where yellow begins (2.5 or 4 mm2), the lower is used so that no gap is left",
  rows: barrels.flatMap(({ colour, awg, fromMm2, toMm2 }) => [
    { of: `${colour}, ${awg} AWG, from`, value: Number(fromMm2.toPrecision(3)) },
    { of: `${colour}, ${awg} AWG, to`, value: toMm2 },
  ]),
};

function within(value: number, from: number, to: number): boolean {
  return value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9);
}
