import type { Document } from "../../../core/document/index.ts";
import { buildNetlist } from "../../../core/netlist/index.ts";
import type { PaperOptions, PaperSource } from "../../../core/papers/index.ts";
import type { Report, ReportTerminal } from "../../../core/report/index.ts";

interface Told {
  readonly terminals?: Readonly<Record<string, Partial<ReportTerminal>>>;
  /** By wire id: the device that guards it. */
  readonly guards?: Readonly<Record<string, string>>;
  readonly report?: Partial<Report>;
}

/** What a paper is made from, with a report made by hand: a terminal nobody speaks of is never hot, a wire has no guard. */
export function sourceOf(document: Document, told: Told = {}): PaperSource {
  const netlist = buildNetlist(document);
  const terminals = netlist.terminals.map(({ address, cover, wires }) => {
    const bare = cover === "bare" && wires.length === 0;
    return [
      address,
      { hot: "never", via: null, when: "never", bare, faultA: null, ...told.terminals?.[address] },
    ] as const;
  });
  const wires = netlist.wires.map(({ wire, capacityA }) => {
    const at = told.guards?.[wire.id];
    const guard = at === undefined ? {} : { guard: { at, ratingA: 15 } };
    return [wire.id, { capacityA, ...guard, unguardedM: 0, faultA: null, clearsWithinS: null }] as const;
  });
  const report: Report = {
    format: "groundstrap-report",
    version: 1,
    capacityTable: { id: "vehicle", title: "Largest fuse by wire", source: "one vehicle maker's table" },
    situations: {},
    terminals: Object.fromEntries(terminals),
    wires: Object.fromEntries(wires),
    summary: { restDrainA: 0, daysToHalf: null, combinations: 1, unproved: [] },
    snags: [],
    ...told.report,
  };
  return { document, netlist, report };
}

export const a5: PaperOptions = { size: "A5", landscape: true, words: "ground" };
