import type { Guard, Hot } from "../positions/index.ts";
import type { PartReading, WireReading } from "../readings/index.ts";
import type { Snag } from "../rules/index.ts";

/** The analysis report, version 1: the public answer, plain JSON. Field meanings stand with the types it is made of. */
export interface Report {
  readonly format: "groundstrap-report";
  readonly version: 1;
  /** Which capacity table the limits come from. */
  readonly capacityTable: { readonly id: string; readonly title: string; readonly source: string };
  readonly situations: Readonly<Record<string, ReportSituation>>;
  readonly terminals: Readonly<Record<string, ReportTerminal>>;
  readonly wires: Readonly<Record<string, ReportWire>>;
  readonly summary: ReportSummary;
  readonly snags: readonly Snag[];
}

export interface ReportSituation {
  readonly name: string;
  readonly settled: boolean;
  readonly residualA: number | null;
  readonly terminals: Readonly<Record<string, { readonly volts: number | null }>>;
  readonly wires: Readonly<Record<string, WireReading>>;
  readonly parts: Readonly<Record<string, PartReading>>;
}

export interface ReportTerminal {
  readonly hot: Hot;
  readonly via: "direct" | "load" | null;
  readonly when: string;
  readonly bare: boolean;
  readonly faultA: number | null;
}

export interface ReportWire {
  readonly capacityA: number | null;
  /** Absent: no way from a source reaches the wire. */
  readonly guard?: Guard | null;
  readonly unguardedM: number | null;
  readonly faultA: number | null;
  readonly clearsWithinS: number | null;
}

export interface ReportSummary {
  readonly restDrainA: number | null;
  readonly daysToHalf: number | null;
  /** Combinations looked at over all groups; and what was left unproved, in words. */
  readonly combinations: number;
  readonly unproved: readonly string[];
}
