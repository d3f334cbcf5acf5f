import type { ReferenceTable } from "./reference-table.ts";

/** Sizes sold as vehicle cable, thinnest first. */
const SOLD = {
  awg: [20, 18, 16, 14, 12, 10, 8, 6, 4, 2].map((gauge) => `${gauge} AWG`).concat("1/0 AWG", "2/0 AWG", "3/0 AWG"),
  mm2: [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70].map((areaMm2) => `${areaMm2} mm2`),
} as const;

/** Wire sizes a person can buy for a vehicle, thinnest first, as a file says them. */
export function soldWireSizes(system: "awg" | "mm2"): readonly string[] {
  return SOLD[system];
}

export const soldSizesTable: ReferenceTable = {
  id: "sold-sizes",
  title: "Wire sizes sold for vehicles",
  unit: "",
  source: "common practice, no source",
  edition: null,
  range: "single-core vehicle cable; other sizes may be drawn, and are never proposed",
  rows: [...SOLD.awg, ...SOLD.mm2].map((size) => ({ of: "sold", value: size })),
};
