import { factsOf } from "../parts/index.ts";
import { ampsThrough } from "../readings/index.ts";
import { thickerWire } from "./remedies/thicker-wire.ts";
import { betterPart } from "./remedies/better-part.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { isOver } from "./study/limits.ts";
import { sharedReturns, type Consumer, type SharedReturn } from "./study/shared-returns.ts";
import { partId } from "./study/elements.ts";
import { amount, listOf, nameOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

export const returnSmall = defineRule({
  id: "return-small",
  level: "fix",
  about: "A return wire or ground strip that several loads share is rated below the sum of them all.",
  source: "An ambulance specification (each ground at least equal to its feed) and two recalls for undersized returns",
  check: (study) => sharedReturns(study).flatMap((shared) => [...tooThin(study, shared), ...strip(study, shared)]),
  say(finding, study) {
    const loads = listOf(study, finding.at.slice(1));
    return `All of ${loads} come back through ${nameOf(study, finding.at[0]!)}: ${amount(finding, "sumA", "A")} together, but it stands ${amount(finding, "capacityA", "A")}.`;
  },
});

function tooThin(study: Study, { wire, serves }: SharedReturn): Finding[] {
  const sumA = sumOf(study, serves);
  // A main's return works for moments, like the main itself.
  if (wire.capacityA === null || wire.wire.main !== undefined || !isOver(sumA, wire.capacityA)) return [];
  return [
    {
      at: [wire.wire.id, ...partsOf(serves)],
      measure: { sumA, capacityA: wire.capacityA },
      remedies: thickerWire(study, wire, sumA),
    },
  ];
}

/** A strip whose only way back is this wire. */
function strip(study: Study, { behind: { part }, serves }: SharedReturn): Finding[] {
  const { returnBar, ratedA } = factsOf(part.part);
  const sumA = sumOf(study, serves);
  if (!returnBar || ratedA == null || !isOver(sumA, ratedA)) return [];
  return [
    {
      at: [part.part.id, ...partsOf(serves)],
      measure: { sumA, capacityA: ratedA },
      remedies: betterPart(study, part, sumA),
    },
  ];
}

/** All of them on together, each at the most it draws in any situation or is stated to draw. */
function sumOf(study: Study, serves: readonly Consumer[]): number {
  return serves.reduce((sum, consumer) => {
    const seenA = worstOf(study, ({ solution }) => Math.abs(ampsThrough(solution, consumer)))?.value ?? 0;
    const statedA = consumer.spec.type === "load" && consumer.spec.role === "use" ? (consumer.spec.statedA ?? 0) : 0;
    return sum + Math.max(seenA, statedA);
  }, 0);
}

function partsOf(serves: readonly Consumer[]): string[] {
  return [...new Set(serves.map(partId))];
}
