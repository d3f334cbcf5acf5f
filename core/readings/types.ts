import type { Solution } from "../circuit/index.ts";
import type { Combination } from "../netlist/index.ts";

/** One way of a part with several devices or contacts. */
export interface WayReading {
  readonly amps: number | null;
  readonly loadPercent?: number | null;
  readonly closed?: boolean | null;
}

/** What one part does in one situation. Which keys are there follows from what it is made of; volts and amps are `null` when unsettled. */
export interface PartReading {
  readonly amps?: number | null;
  readonly volts?: number | null;
  readonly watts?: number | null;
  readonly on?: boolean | null;
  /** Of a load: source volts less the volts across it, feed and return together, and that in percent of the source volts. */
  readonly lossV?: number | null;
  readonly lossPercent?: number | null;
  readonly pulledIn?: boolean | null;
  readonly coilV?: number | null;
  readonly coilAmps?: number | null;
  readonly closed?: boolean | null;
  readonly loadPercent?: number | null;
  readonly startAmps?: number | null;
  readonly startVolts?: number | null;
  readonly outAmps?: number | null;
  readonly outVolts?: number | null;
  /** Of several devices or contacts in one part, by terminal name. */
  readonly ways?: Readonly<Record<string, WayReading>>;
}

export interface WireReading {
  readonly amps: number | null;
  /** Volts at `from` less volts at `to`; `null` when the wire's size or length is unknown. */
  readonly dropV: number | null;
  /** Of the open-circuit volts of the source that feeds it; `null` when none does or the drop is unknown. */
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
  /** Highest open-circuit volts of the sources that feed each node, by a direct way or through a load; NaN-free, 0: none. */
  readonly feedV: Float64Array;
}
