import { analyse } from "../../core/analyse.ts";
import type { Example } from "../../core/examples/index.ts";
import type { Report } from "../../core/report/index.ts";

const kept = new Map<string, Report>();

/** The report on a demo, worked out once. */
export function reportOn({ name, document }: Example): Report {
  const report = kept.get(name) ?? analyse(document).report;
  kept.set(name, report);
  return report;
}

/** Every snag as "level rule place", the place shown first: "stop hot-bare k1.87a"; sorted. */
export function foundIn(example: Example): string[] {
  return reportOn(example)
    .snags.map(({ level, rule, at }) => `${level} ${rule} ${at[0]}`)
    .toSorted();
}

/** Volts across a load of constant power fed through a resistance: the higher solution of v² − emf·v + watts·ohm = 0. */
export function voltsOf(watts: number, emfV: number, ohm: number): number {
  return (emfV + Math.sqrt(emfV ** 2 - 4 * watts * ohm)) / 2;
}
