import type { ReferenceTable } from "./reference-table.ts";

/** Gauges the help page lists, thinnest first. */
const LISTED_GAUGES = [24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3];

/** Circular mils in one square millimetre: a circular mil is the area of a circle 0.0254 mm across. */
const CIRCULAR_MILS_PER_MM2 = 4 / (Math.PI * 0.0254 ** 2);

/**
 * Copper area of a wire gauge in mm²; 1/0 to 4/0 are 0 to -3.
 * Source: ASTM B258: diameter 0.127 mm · 92^((36 − n)/39).
 */
export function awgAreaMm2(gauge: number): number {
  return (Math.PI / 4) * (0.127 * 92 ** ((36 - gauge) / 39)) ** 2;
}

/** The same area in circular mils, the unit barrels are chosen by. */
export function circularMils(areaMm2: number): number {
  return areaMm2 * CIRCULAR_MILS_PER_MM2;
}

export const awgTable: ReferenceTable = {
  id: "awg",
  title: "American wire gauge: copper area",
  unit: "mm2",
  source: "ASTM B258, diameter 0.127 mm · 92^((36 − n)/39)",
  edition: null,
  range: "24 AWG to 4/0 checked against printed tables; the formula is used from 40 AWG to 4/0",
  rows: LISTED_GAUGES.map((gauge) => ({
    of: gauge > 0 ? `${gauge} AWG` : `${1 - gauge}/0 AWG`,
    value: Number(awgAreaMm2(gauge).toPrecision(5)),
  })),
};
