import type { Load } from "../parts/index.ts";
import { voltsBetween } from "../readings/index.ts";
import { swapEnds } from "./remedies/swap-ends.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { addressOf, elementsOf, partId, usesOf, type ElementOf } from "./study/elements.ts";
import { amount, placeName, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

/** Volts backwards that count: less is a difference between two grounds (common practice, no source). */
const LEAST_V = 1;

export const reverseVolts = defineRule({
  id: "reverse-volts",
  level: "stop",
  about: "A part that minds its polarity gets its volts backwards.",
  source: "Lamp and appliance makers' instructions; common practice",
  check: (study) => [
    ...usesOf(study.netlist).flatMap((use) => (use.spec.polarised ? reversed(study, use, use.spec.a, use.spec.b) : [])),
    ...elementsOf(study.netlist, "converter").flatMap((one) => reversed(study, one, one.spec.inPlus, one.spec.inMinus)),
  ],
  say(finding, study) {
    const place = placeName(finding, study);
    const gets = `${place} gets ${amount(finding, "volts", "V")} backwards ${situationOf(finding, study)}`;
    return finding.level ? `${gets}: it stays dark.` : `${gets}: it may be destroyed.`;
  },
});

function reversed(
  study: Study,
  part: ElementOf<"load"> | ElementOf<"converter">,
  plus: string,
  minus: string,
): Finding[] {
  const worst = worstOf(study, ({ solution }) => {
    const volts = voltsBetween(solution, part.a, part.b);
    return volts === null ? null : -volts;
  });
  if (!worst || worst.value < LEAST_V) return [];
  return [
    {
      ...(part.spec.type === "load" && blocksHarmlessly(part.spec) ? { level: "fix" } : {}),
      at: [partId(part), addressOf(part, plus)],
      measure: { volts: worst.value, situation: worst.situation.id },
      remedies: [
        {
          id: "swap-ends",
          text: "Swap its two wires",
          edits: swapEnds(study.netlist, addressOf(part, plus), addressOf(part, minus)),
        },
      ],
    },
  ];
}

/** An LED lamp only stays dark. */
function blocksHarmlessly({ draw }: Load): boolean {
  return draw.law === "power" && draw.opens !== null;
}
