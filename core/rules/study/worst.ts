import type { SituationReading } from "../../readings/index.ts";
import type { Study } from "../rule.ts";

export interface Worst {
  readonly situation: SituationReading;
  readonly value: number;
}

/** Settled situations, `rest` first: the ones amps and volts can be judged in. */
export function settledSituations({ situations }: Study): readonly SituationReading[] {
  return situations.filter(({ settled }) => settled);
}

/** The situation in which `measure` is largest; `null` where it has no answer in any. The earliest of equals. */
export function worstOf(study: Study, measure: (situation: SituationReading) => number | null): Worst | null {
  let worst: Worst | null = null;
  for (const situation of settledSituations(study)) {
    const value = measure(situation);
    if (value !== null && (worst === null || value > worst.value)) worst = { situation, value };
  }
  return worst;
}

/** Largest amps in a wire over all situations, 0 where none settles. */
export function mostAmps(study: Study, wireId: string): number {
  return worstOf(study, ({ wires }) => Math.abs(wires[wireId]?.amps ?? 0))?.value ?? 0;
}
