import type { NetPart } from "../netlist/index.ts";
import { factsOf } from "../parts/index.ts";
import { ampsThrough } from "../readings/index.ts";
import { betterPart } from "./remedies/better-part.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { addressOf, elementsIn } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { amount, placeName, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

export const plugOverload = defineRule({
  id: "plug-overload",
  level: "fix",
  about: "A way of a plug carries more than one of its contacts stands.",
  source: "The plug's own rating",
  check: (study) => study.netlist.parts.flatMap((part) => overloaded(study, part)),
  say: (finding, study) =>
    `${placeName(finding, study, 1)} carries ${amount(finding, "amps", "A")} ${situationOf(finding, study)}, over its ${amount(finding, "ratedA", "A")}: this plug will heat.`,
});

function overloaded(study: Study, part: NetPart): Finding[] {
  const { plug, ratedA } = factsOf(part.part);
  if (!plug || ratedA == null) return [];
  return elementsIn(part, "link").flatMap((way): Finding[] => {
    const worst = worstOf(study, ({ solution }) => Math.abs(ampsThrough(solution, way)));
    if (!worst || !isOver(worst.value, ratedA)) return [];
    return [
      {
        at: [part.part.id, addressOf(way, way.spec.a)],
        measure: { amps: worst.value, ratedA, situation: worst.situation.id },
        remedies: betterPart(study, part, worst.value),
      },
    ];
  });
}
