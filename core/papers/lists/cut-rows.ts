import type { NetWire } from "../../netlist/index.ts";
import type { PaperSource } from "../paper.ts";

/** Added to each wire before its final trim, metres. Common practice of harness makers: about 100 mm. */
export const ALLOWANCE_M = 0.1;
/** Bought over the sum of the cut lengths. Common practice, no source: 10 to 15 %. */
export const SPARE_SHARE = 0.15;

export interface CutRow {
  readonly wire: NetWire;
  readonly routeM: number | null;
  /** Route and allowance; `null` when nobody stated the length. */
  readonly cutM: number | null;
}

/** Of one size and colour. */
export interface CutTotal {
  readonly size: string;
  readonly colour: string;
  readonly count: number;
  /** Sum of the known cut lengths, metres. */
  readonly cutM: number;
  readonly withSpareM: number;
  /** Wires whose length nobody stated: not in the sums. */
  readonly unknown: number;
}

const NOT_STATED = "not stated";

/** Thickest first, then by colour letters, then longest first; unknown sizes and lengths come last. */
export function cutRows({ netlist }: PaperSource): CutRow[] {
  const rows = netlist.wires.map((wire): CutRow => {
    const routeM = wire.wire.metres ?? null;
    return { wire, routeM, cutM: routeM === null ? null : routeM + ALLOWANCE_M };
  });
  return rows.sort(
    (a, b) =>
      (b.wire.areaMm2 ?? 0) - (a.wire.areaMm2 ?? 0) ||
      compare(sizeOf(a), sizeOf(b)) ||
      compare(colourOf(a), colourOf(b)) ||
      (b.routeM ?? -1) - (a.routeM ?? -1),
  );
}

/** Totals in the order of the rows. */
export function cutTotals(rows: readonly CutRow[]): CutTotal[] {
  const groups = new Map<string, CutRow[]>();
  for (const row of rows) {
    const key = JSON.stringify([sizeOf(row), colourOf(row)]);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()].map((group) => {
    const cutM = group.reduce((sum, row) => sum + (row.cutM ?? 0), 0);
    return {
      size: sizeOf(group[0]!),
      colour: colourOf(group[0]!),
      count: group.length,
      cutM,
      withSpareM: cutM * (1 + SPARE_SHARE),
      unknown: group.filter((row) => row.cutM === null).length,
    };
  });
}

function sizeOf({ wire }: CutRow): string {
  return wire.wire.size ?? NOT_STATED;
}

function colourOf({ wire }: CutRow): string {
  return wire.wire.colour ?? NOT_STATED;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
