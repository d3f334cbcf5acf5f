import type { Solution } from "../circuit/index.ts";
import type { Combination } from "../netlist/index.ts";

/** What one part does in one situation. Which keys are there follows from what it is made of; volts and amps are `null` when unsettled. */
export interface PartReading {
  readonly amps?: number | null;
  readonly volts?: number | null;
  readonly watts?: number | null;
  readonly on?: boolean | null;
  readonly pulledIn?: boolean | null;
  readonly coilV?: number | null;
  readonly loadPercent?: number | null;
  readonly startAmps?: number | null;
  readonly startVolts?: number | null;
  readonly outAmps?: number | null;
  /** Of several devices or contacts in one part, by terminal name. */
  readonly ways?: Readonly<Record<string, { readonly amps: number | null; readonly loadPercent?: number | null }>>;
}

export interface WireReading {
  readonly amps: number | null;
  readonly dropV: number | null;
  readonly dropPercent: number | null;
}

/** One situation solved and read off. */
export interface SituationReading {
  readonly id: string;
  readonly name: string;
  readonly combination: Combination;
  readonly solution: Solution;
  readonly settled: boolean;
  /** Amps; `null` when unsettled. */
  readonly residualA: number | null;
  /** By terminal address; `null`: on no network, or unsettled. */
  readonly terminals: Readonly<Record<string, { readonly volts: number | null }>>;
  readonly wires: Readonly<Record<string, WireReading>>;
  readonly parts: Readonly<Record<string, PartReading>>;
}
