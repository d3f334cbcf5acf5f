import { voltsBetween } from "../readings/index.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { addressOf, elementsOf, isWired, partId, type ElementOf } from "./study/elements.ts";
import { isComplete } from "./study/samples.ts";
import { placeName } from "./study/words.ts";

export const relayMiswired = defineRule({
  id: "relay-miswired",
  level: "fix",
  about: "A relay that can never switch, whatever is operated, or can never let go.",
  source: "DIN 72552 terminal marks; every combination of the controls is looked at",
  check: (study) => (isComplete(study) ? elementsOf(study.netlist, "coil").flatMap((coil) => stuck(study, coil)) : []),
  say(finding, study) {
    const place = placeName(finding, study);
    return finding.measure["stuck"] === "pulled-in"
      ? `${place} can never release: its coil is live in every position of the controls.`
      : `${place} can never switch: its coil gets no volts in any position of the controls.`;
  },
});

function stuck(study: Study, coil: ElementOf<"coil">): Finding[] {
  const solutions = study.standing.samples.map(({ solution }) => solution).filter(({ status }) => status === "ok");
  if (!isWired(coil.part) || solutions.length === 0) return [];
  const at = [partId(coil), addressOf(coil, coil.spec.b), addressOf(coil, coil.spec.a)];
  if (solutions.every(({ pulledIn }) => pulledIn[coil.relay] === 1)) {
    return [{ at, measure: { stuck: "pulled-in" }, remedies: [] }];
  }
  // With volts, but too few, the wiring is right and the volts are coil-weak's affair.
  const isDead = solutions.every(
    (solution) => Math.abs(voltsBetween(solution, coil.a, coil.b) ?? 0) <= coil.spec.dropOutV,
  );
  return isDead ? [{ at, measure: { stuck: "released" }, remedies: [] }] : [];
}
