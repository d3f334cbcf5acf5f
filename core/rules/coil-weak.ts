import { voltsBetween } from "../readings/index.ts";
import { lessDrop } from "./remedies/less-drop.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { addressOf, elementsOf, partId, type ElementOf } from "./study/elements.ts";
import { isUnder } from "./study/limits.ts";
import { isEnergised, tiesIn } from "./study/ties.ts";
import { amount, placeName, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

/** Coil volts wanted, over the volts it surely pulls in at. */
const MARGIN = 1.1;

export const coilWeak = defineRule({
  id: "coil-weak",
  level: "fix",
  about:
    "A relay's coil gets less than 1.1 times the volts it pulls in at; it may chatter, or not click when the battery is low.",
  source:
    "California DOT vehicle-equipment electrical standard, section 8.3: energising volts at least 1.1 times the rated operate volts",
  check: (study) => elementsOf(study.netlist, "coil").flatMap((coil) => weak(study, coil)),
  say: (finding, study) =>
    `${placeName(finding, study)} gets ${amount(finding, "coilV", "V")} at its coil ${situationOf(finding, study)} and wants ${amount(finding, "wantedV", "V")}: it may chatter, or not click when the battery is low.`,
});

function weak(study: Study, coil: ElementOf<"coil">): Finding[] {
  const { pullInV } = coil.spec;
  const wantedV = pullInV * MARGIN;
  const worst = worstOf(study, ({ combination, solution }) => {
    const coilV = Math.abs(voltsBetween(solution, coil.a, coil.b) ?? 0);
    const isMeant = coilV >= pullInV / 2 || isEnergised(coil, tiesIn(study.netlist, combination, solution));
    return isMeant ? -coilV : null;
  });
  if (!worst || !isUnder(-worst.value, wantedV)) return [];
  return [
    {
      at: [partId(coil), addressOf(coil, coil.spec.b), addressOf(coil, coil.spec.a)],
      measure: { coilV: -worst.value, pullInV, wantedV, situation: worst.situation.id },
      remedies: lessDrop(study, coil, worst.situation, wantedV + worst.value),
    },
  ];
}
