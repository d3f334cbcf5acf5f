import type { ReferenceTable } from "./reference-table.ts";

/** Cold resistance, milliohm, by rated current, A; smallest first. Littelfuse series 287 sheet. */
const BLADE_MILLIOHM = [
  [1, 123],
  [2, 53.5],
  [3, 31.1],
  [4, 22.8],
  [5, 17.85],
  [7.5, 10.91],
  [10, 7.7],
  [15, 4.8],
  [20, 3.38],
  [25, 2.52],
  [30, 1.97],
  [40, 1.44],
] as const;

/** Volts across a fuse at its rating, in millivolts, kept outside the table: its first and its last row. */
const FIRST_MV = 123;
const LAST_MV = 57.6;

/**
 * Usual cold resistance of a fuse in milliohm, straight line between the listed ratings.
 * Range: above 40 A 57.6/A and below 1 A 123/A, as if the cold drop at the rating stayed that of the nearest row.
 * Throws RangeError when `ratingA` is not above zero.
 * Source: data sheet of a medium blade series (fuse maker, rev. 2025-02).
 */
export function fuseMilliohm(ratingA: number): number {
  if (!(ratingA > 0)) throw new RangeError(`fuseMilliohm: got ratingA ${ratingA}, wanted above 0 A`);
  const above = BLADE_MILLIOHM.findIndex(([listedA]) => listedA >= ratingA);
  const high = BLADE_MILLIOHM[above];
  if (!high) return LAST_MV / ratingA;
  if (high[0] === ratingA) return high[1];
  const low = BLADE_MILLIOHM[above - 1];
  if (!low) return FIRST_MV / ratingA;
  return low[1] + ((high[1] - low[1]) * (ratingA - low[0])) / (high[0] - low[0]);
}

export const fuseResistanceTable: ReferenceTable = {
  id: "fuse-resistance",
  title: "Cold resistance of blade fuses",
  unit: "mohm",
  source: "a fuse maker's data sheet, medium blade size",
  edition: "rev. 2025-02",
  range: "typical, at low load (1.3 to 1.7 times as much at the rating); 57.6/A above 40 A, 123/A below 1 A",
  rows: BLADE_MILLIOHM.map(([ratingA, milliohm]) => ({ of: `${ratingA} A`, value: milliohm })),
};
