import type { Solution } from "../../circuit/index.ts";
import { startSolution, type SituationReading } from "../../readings/index.ts";
import type { Study } from "../rule.ts";
import { partId, usesOf, type ElementOf } from "./elements.ts";
import { settledSituations } from "./worst.ts";

/** The moment one load starts, with everything else as the situation has it. */
export interface Start {
  readonly use: ElementOf<"load">;
  readonly situation: SituationReading;
  readonly solution: Solution;
}

/** Every start that can be worked out: of loads that are on in a settled situation and whose start is stated. */
export function startsOf(study: Study): readonly Start[] {
  return settledSituations(study).flatMap((situation) =>
    usesOf(study.netlist).flatMap((use): Start[] => {
      if (use.spec.start === null || situation.parts[partId(use)]?.on !== true) return [];
      const solution = startSolution(study.netlist, use, situation.combination, situation.solution);
      return solution?.status === "ok" ? [{ use, situation, solution }] : [];
    }),
  );
}
