import type { Netlist } from "../netlist/index.ts";
import { ampsThrough, type SituationReading } from "../readings/index.ts";
import { lessDrop } from "./remedies/less-drop.ts";
import { defineRule, type Finding } from "./rule.ts";
import { partId, usesOf, type ElementOf } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { pathsOf } from "./study/spread.ts";
import { isEnergised, tiesIn } from "./study/ties.ts";
import { amount, nameOf, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

const LIMIT_V = 0.2;

export const groundDrop = defineRule({
  id: "ground-drop",
  level: "advice",
  about: "The negative of a load stands more than 0.2 V above the battery's: the loss is on the ground side.",
  source: "Workshop voltage-drop tests: 0.1 to 0.2 V on the ground side of a loaded circuit",
  check: (study) =>
    usesOf(study.netlist).flatMap((use): Finding[] => {
      const negatives = [...pathsOf(study.netlist).negatives];
      const worst = worstOf(study, (situation) => groundV(study.netlist, negatives, use, situation));
      if (!worst || !isOver(worst.value, LIMIT_V)) return [];
      return [
        {
          at: [partId(use)],
          measure: { groundV: worst.value, limitV: LIMIT_V, situation: worst.situation.id },
          remedies: lessDrop(study, use, worst.situation, worst.value - LIMIT_V, "return"),
        },
      ];
    }),
  say: (finding, study) =>
    `The negative of ${nameOf(study, finding.at[0]!)} stands ${amount(finding, "groundV", "V")} above the battery's ${situationOf(finding, study)}: the loss is on the ground side, where ${LIMIT_V} V is the limit.`,
});

/** Volts at the lower end of a load that draws, over the negative it comes back to; `null` when it is not fed straight. */
function groundV(
  netlist: Netlist,
  negatives: readonly number[],
  use: ElementOf<"load">,
  { combination, solution }: SituationReading,
): number | null {
  const ties = tiesIn(netlist, combination, solution);
  if (!isEnergised(use, ties) || ampsThrough(solution, use) === 0) return null;
  const end = ties.onMinus(use.b) && !(ties.onMinus(use.a) && ampsThrough(solution, use) < 0) ? use.b : use.a;
  const own = ties.classOf(end);
  const zeros = negatives.filter((node) => ties.classOf(node) === own).map((node) => solution.nodeV[node]!);
  return zeros.length === 0 ? null : solution.nodeV[end]! - Math.min(...zeros);
}
