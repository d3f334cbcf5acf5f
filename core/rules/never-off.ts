import { meantToStayOn } from "./remedies/meant-to-stay-on.ts";
import { switchInFeed } from "./remedies/switch-in-feed.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { addressOf, elementsOf, partId, usesOf } from "./study/elements.ts";
import { isComplete } from "./study/samples.ts";
import { works } from "./study/working.ts";
import { placeName } from "./study/words.ts";

export const neverOff = defineRule({
  id: "never-off",
  level: "fix",
  about: "A load that should go off, or a relay, is on in every position of the controls: the battery goes flat.",
  source: "Common practice; every combination of the controls is looked at",
  check: (study) => (isComplete(study) ? [...loads(study), ...relays(study)] : []),
  say: (finding, study) =>
    `${placeName(finding, study)} is on in every position of the controls: nothing turns it off, and the battery goes flat.`,
});

/** A load meant to stay on (a fridge, a clock) may. */
function loads(study: Study): Finding[] {
  const solutions = settled(study);
  return usesOf(study.netlist)
    .filter((use) => use.spec.mustBeOffAtRest && solutions.length > 0 && solutions.every((one) => works(use, one)))
    .map((use) => ({
      at: [partId(use)],
      measure: {},
      remedies: [...switchInFeed(study, addressOf(use, use.spec.a)), ...meantToStayOn(use)],
    }));
}

function relays(study: Study): Finding[] {
  const solutions = settled(study);
  return elementsOf(study.netlist, "coil")
    .filter(({ relay }) => solutions.length > 0 && solutions.every(({ pulledIn }) => pulledIn[relay] === 1))
    .map((coil) => ({
      at: [partId(coil), addressOf(coil, coil.spec.b), addressOf(coil, coil.spec.a)],
      measure: {},
      remedies: switchInFeed(study, addressOf(coil, coil.spec.b)),
    }));
}

function settled({ standing }: Study) {
  return standing.samples.map(({ solution }) => solution).filter(({ status }) => status === "ok");
}
