import { parseWireSize } from "../units/index.ts";
import { capacityTables } from "./capacity-tables.ts";
import type { ReferenceTable } from "./reference-table.ts";
import { wireAreaMm2 } from "./wire-ohm.ts";

export interface WireInPlace {
  /** As a file says it: "16 AWG", "1.5 mm2". */
  readonly size: string;
  /** Temperature rating of the insulation, °C. */
  readonly insulationC: number;
  readonly ambientC: number;
  /** Current-carrying wires lying together, this one included. */
  readonly bundle: number;
}

/** How a current limit came about, for the Card and the papers. */
export interface WireCapacity {
  readonly capacityA: number;
  readonly tableTitle: string;
  /** The row the wire was read from; smaller than the wire where its own size is not listed. */
  readonly rowSize: string;
  readonly rowA: number;
  readonly ambientFactor: number;
  readonly bundleFactor: number;
}

const BUNDLE_FACTORS = [
  { from: 3, factor: 0.7 },
  { from: 4, factor: 0.6 },
  { from: 7, factor: 0.5 },
  { from: 25, factor: 0.4, fromMemory: true },
] as const;

/**
 * Current a wire may carry, in A, from the table chosen and derated for its place.
 *
 * Sizes between two rows take the row below. Above the table's ambient the limit falls by
 * sqrt((Tinsulation − Tambient)/(Tinsulation − Ttable)); below it nothing is gained; at or above the insulation rating it is 0.
 * No answer: `null` for no size, a wire smaller than the smallest row, or an insulation rating below the lowest column.
 * Source: the tables' own; heat balance of IEC 60287 for the ambient; bundles 33 CFR 183.425 note 2.
 */
export function wireCapacity(wire: WireInPlace, table: keyof typeof capacityTables): WireCapacity | null {
  const { title, ambientC: tableC, insulationC: columns, ...rows } = capacityTables[table];
  const size = parseWireSize(wire.size);
  const areaMm2 = wireAreaMm2(wire.size);
  if (!size.ok || areaMm2 === null) return null;
  const row = rows[size.value.system].findLast((each) => each.areaMm2 <= areaMm2 * (1 + 1e-9));
  const rowA = row?.amps[columns.findLastIndex((columnC) => columnC <= wire.insulationC)];
  if (!row || rowA === undefined) return null;
  const ambient = ambientFactor(wire.insulationC, wire.ambientC, tableC);
  const bundle = bundleFactor(wire.bundle);
  const capacityA = rowA * ambient * bundle;
  return { capacityA, tableTitle: title, rowSize: row.size, rowA, ambientFactor: ambient, bundleFactor: bundle };
}

/** The limit of `wireCapacity` alone, A; `null` where that has no answer. */
export function wireCapacityA(wire: WireInPlace, table: keyof typeof capacityTables): number | null {
  return wireCapacity(wire, table)?.capacityA ?? null;
}

/**
 * Share of a current limit left at `ambientC`, for a limit stated at `tableC`: sqrt((Tins − Tamb)/(Tins − Ttable)) above it,
 * 1 at or below it, 0 from the insulation rating up. Source: heat balance of IEC 60287, used by IEC 60364-5-52.
 */
export function ambientFactor(insulationC: number, ambientC: number, tableC: number): number {
  if (ambientC >= insulationC) return 0;
  return ambientC <= tableC ? 1 : Math.sqrt((insulationC - ambientC) / (insulationC - tableC));
}

export const bundleTable: ReferenceTable = {
  id: "bundle-factors",
  title: "Share of the current limit left in a bundle",
  unit: "ratio",
  source: "33 CFR 183.425 Table 5 note 2; ABYC E-11 applies the same below 50 V",
  edition: null,
  range: "current-carrying wires lying together; 1 or 2 keep all of it",
  rows: BUNDLE_FACTORS.map(({ from, factor, ...row }) => ({ of: `${from} wires and more`, value: factor, ...row })),
};

function bundleFactor(wires: number): number {
  return BUNDLE_FACTORS.findLast(({ from }) => wires >= from)?.factor ?? 1;
}
