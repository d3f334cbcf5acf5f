import type { Blame } from "../../core/diagnosis/index.ts";
import type { TakenReading } from "../../core/document/index.ts";
import type { Drill, Fault } from "../../core/drill/index.ts";
import type { MeterReading } from "../../core/meter/index.ts";
import type { Proposal } from "../../core/sizing/index.ts";
import type { Touch } from "../../core/touch/index.ts";

/** Questions about the drawing last analysed that are only answered when asked: what is asked, and what comes back. */
export interface Consultations {
  /** `at`: a terminal or a wire. */
  readonly touch: { readonly asks: { readonly at: string }; readonly gives: Touch | null };
  /** Leads on terminals. */
  readonly meter: {
    readonly asks: { readonly dial: "volts" | "ohms"; readonly red: string; readonly black: string };
    readonly gives: MeterReading | null;
  };
  readonly clamp: { readonly asks: { readonly wire: string }; readonly gives: MeterReading | null };
  readonly faults: { readonly asks: object; readonly gives: readonly Fault[] };
  readonly drill: { readonly asks: { readonly fault: Fault }; readonly gives: Drill };
  /** `wrong` is one of the readings. */
  readonly diagnosis: {
    readonly asks: { readonly readings: readonly TakenReading[]; readonly wrong: TakenReading };
    readonly gives: readonly Blame[];
  };
  /** `null`: the whole drawing. */
  readonly sizing: { readonly asks: { readonly scope: readonly string[] | null }; readonly gives: Proposal };
}

export type Topic = keyof Consultations;
