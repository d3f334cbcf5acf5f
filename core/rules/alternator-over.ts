import { engineRuns } from "../netlist/index.ts";
import { ampsThrough, type SituationReading } from "../readings/index.ts";
import { defineRule, type Study } from "./rule.ts";
import { elementsOf, partId } from "./study/elements.ts";
import { existingOf } from "./study/feeds.ts";
import { isOver } from "./study/limits.ts";
import { amount, situationOf } from "./study/words.ts";
import { settledSituations } from "./study/worst.ts";

/** Share of the alternator's rating that may be used. */
const LIMIT = 0.8;

export const alternatorOver = defineRule({
  id: "alternator-over",
  level: "fix",
  about:
    "What the vehicle uses and what was added are together more than 80 % of its alternator: the battery goes down while driving.",
  source: "Alternator makers' load guides (50 to 75 % preferred); common practice for the 80 %",
  check(study) {
    const { alternatorA, baseLoadA } = study.netlist.system;
    if (alternatorA === null || baseLoadA === null) return [];
    const [worst] = drivingSituations(study)
      .map((situation) => ({ situation, addedA: addedIn(study, situation) }))
      .toSorted((one, other) => other.addedA - one.addedA);
    const limitA = LIMIT * alternatorA;
    const sources = elementsOf(study.netlist, "source").toSorted(
      (one, other) => Number(other.spec.zero) - Number(one.spec.zero),
    );
    if (!worst || sources.length === 0 || !isOver(baseLoadA + worst.addedA, limitA)) return [];
    return [
      {
        at: [...new Set(sources.map(partId))],
        measure: {
          addedA: worst.addedA,
          baseLoadA,
          sumA: baseLoadA + worst.addedA,
          alternatorA,
          limitA,
          situation: worst.situation.id,
        },
        remedies: [{ id: "larger-alternator", text: "Switch something off, or fit a larger alternator", edits: [] }],
      },
    ];
  },
  say: (finding, study) =>
    `The vehicle's ${amount(finding, "baseLoadA", "A")} and the ${amount(finding, "addedA", "A")} added make ${amount(finding, "sumA", "A")} ${situationOf(finding, study)}, over 80 % of the ${amount(finding, "alternatorA", "A")} alternator: the battery goes down while you work.`,
});

/** Those with the engine running; where none is declared, all. */
function drivingSituations(study: Study): readonly SituationReading[] {
  const settled = settledSituations(study);
  const running = settled.filter(({ combination }) => engineRuns(combination));
  return running.length > 0 ? running : settled;
}

/** What all sources deliver beyond what the vehicle already had on its feeds, amps. */
function addedIn({ netlist }: Study, { solution }: SituationReading): number {
  return elementsOf(netlist, "source").reduce((sum, source) => {
    const ownA = existingOf(netlist, source).reduce((own, load) => own + ampsThrough(solution, load), 0);
    return sum + Math.max(ampsThrough(solution, source), 0) - ownA;
  }, 0);
}
