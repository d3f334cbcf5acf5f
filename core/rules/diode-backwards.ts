import { changedTo } from "../parts/index.ts";
import { ampsThrough } from "../readings/index.ts";
import { swapEnds } from "./remedies/swap-ends.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { addressOf, elementsOf, partId, type ElementOf } from "./study/elements.ts";
import { samplesOf, positionsInWords, type Sample } from "./study/samples.ts";
import { tiesIn } from "./study/ties.ts";
import { amount, placeName } from "./study/words.ts";

/** Less than this is leakage of the sums, amps. */
const CONDUCTS_A = 1e-3;

export const diodeBackwards = defineRule({
  id: "diode-backwards",
  level: "stop",
  about:
    "The diode across a coil, or one from a live wire to ground, lets current straight through: a short as soon as it is on.",
  source: "Relay makers' notes: the suppression diode's stripe is at 86, which must be the positive",
  check: (study) => elementsOf(study.netlist, "diode").flatMap((diode) => backwards(study, diode)),
  say(finding, study) {
    const what = finding.measure["of"] === "coil" ? "the diode across its coil" : "it";
    return `${placeName(finding, study)} is the wrong way round: ${what} passes ${amount(finding, "amps", "A")} straight to ground when ${finding.measure["when"]}, and the fuse or the module that feeds it goes.`;
  },
});

function backwards(study: Study, diode: ElementOf<"diode">): Finding[] {
  const isCoils = diode.spec.suppresses !== undefined;
  const shows = samplesOf(study).filter(
    (sample) => ampsThrough(sample.solution, diode) > CONDUCTS_A && (isCoils || isShort(study, diode, sample)),
  );
  const [first] = shows;
  if (!first) return [];
  const worst = shows.reduce(
    (one, other) => (ampsThrough(other.solution, diode) > ampsThrough(one.solution, diode) * 1.001 ? other : one),
    first,
  );
  return [
    {
      at: [partId(diode), addressOf(diode, diode.spec.k), addressOf(diode, diode.spec.a)],
      measure: {
        of: isCoils ? "coil" : "diode",
        amps: ampsThrough(worst.solution, diode),
        when: positionsInWords(study, worst.combination),
      },
      remedies: [
        {
          id: "swap-ends",
          text: `Swap the wires of ${diode.spec.a} and ${diode.spec.k}`,
          edits: swapEnds(study.netlist, addressOf(diode, diode.spec.a), addressOf(diode, diode.spec.k)),
        },
        ...(isCoils ? otherSuppression(diode) : []),
      ],
    },
  ];
}

/** Straight from a positive to a negative, with nothing that uses the current between. */
function isShort({ netlist }: Study, { a, b }: ElementOf<"diode">, { combination, solution }: Sample): boolean {
  const ties = tiesIn(netlist, combination, solution);
  return ties.onPlus(a) && ties.onMinus(b);
}

function otherSuppression({ part }: ElementOf<"diode">): readonly Remedy[] {
  if (!("suppression" in part.settings)) return [];
  return [
    {
      id: "suppressed-relay",
      text: "Fit a relay with a resistor across its coil, which works either way round",
      edits: [{ op: "set-props", id: part.part.id, change: changedTo.suppressedEitherWay }],
    },
  ];
}
