import { parseWireSize } from "../units/index.ts";
import { awgAreaMm2 } from "./awg.ts";
import type { ReferenceTable } from "./reference-table.ts";
import { wireAreaMm2 } from "./wire-ohm.ts";

/** Newtons by gauge, thickest wire first; lbf beside them as printed. Misprints at 6 and 2/0 AWG put right by their lbf. */
const PULL_OUT = [
  { gauge: -1, minN: 1335, lbf: 300 },
  { gauge: 0, minN: 1112.5, lbf: 250 },
  { gauge: 2, minN: 801, lbf: 180 },
  { gauge: 4, minN: 623, lbf: 140 },
  { gauge: 6, minN: 445, lbf: 100 },
  { gauge: 8, minN: 400.5, lbf: 90 },
  { gauge: 10, minN: 356, lbf: 80 },
  { gauge: 12, minN: 311.5, lbf: 70 },
  { gauge: 14, minN: 222.5, lbf: 50 },
  { gauge: 16, minN: 133.5, lbf: 30 },
  { gauge: 18, minN: 89, lbf: 20 },
  { gauge: 20, minN: 57.9, lbf: 13 },
  { gauge: 22, minN: 35.6, lbf: 8 },
  { gauge: 24, minN: 22.3, lbf: 5 },
  { gauge: 26, minN: 13.4, lbf: 3 },
] as const;

/**
 * Pull a good crimp on this wire withstands, newtons and pounds. Sizes between take the listed wire below.
 * No answer: `null` for no size and for wires thinner than 26 AWG.
 * Source: terminal makers' application specifications (values as in UL 486A).
 */
export function crimpPullOut(size: string): { readonly minN: number; readonly lbf: number } | null {
  const areaMm2 = wireAreaMm2(size);
  if (!parseWireSize(size).ok || areaMm2 === null) return null;
  const row = PULL_OUT.find(({ gauge }) => awgAreaMm2(gauge) <= areaMm2 * (1 + 1e-9));
  return row ? { minN: row.minN, lbf: row.lbf } : null;
}

export const pullOutTable: ReferenceTable = {
  id: "pull-out",
  title: "Smallest pull a crimp withstands",
  unit: "N",
  source: "terminal makers' application specifications (UL listed terminals; values as in UL 486A)",
  edition: null,
  range: "crimped stranded copper, one wire in the barrel",
  rows: PULL_OUT.map(({ gauge, minN, lbf }) => ({
    of: gauge > 0 ? `${gauge} AWG` : `${1 - gauge}/0 AWG`,
    value: minN,
    note: `${lbf} lbf`,
  })),
};
