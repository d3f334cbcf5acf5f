import type { SituationReading } from "../readings/index.ts";
import { voltsBetween } from "../readings/index.ts";
import { lessDrop } from "./remedies/less-drop.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { addressOf, elementsOf, partId, usesOf, type ElementOf } from "./study/elements.ts";
import { isOver, isUnder } from "./study/limits.ts";
import { isEnergised, tiesIn } from "./study/ties.ts";
import { amount, placeName, situationOf } from "./study/words.ts";
import { settledSituations } from "./study/worst.ts";

/** Of a part that states no limit: this share of its rated volts is too much, as 16 V for 12.8 V. */
const MOST_OF_RATED = 1.25;

export const wrongVoltage = defineRule({
  id: "wrong-voltage",
  level: "fix",
  about: "A load or coil gets volts outside what it is made for; too many harm it.",
  source:
    "The part's own limits; where it states none, 1.25 times its rated volts at most (common practice, no source)",
  check: (study) => [
    ...usesOf(study.netlist).flatMap((use) => wrongVolts(study, use)),
    ...elementsOf(study.netlist, "coil").flatMap((coil) => wrongCoilVolts(study, coil)),
  ],
  say(finding, study) {
    const place = placeName(finding, study);
    const gets = `${place} gets ${amount(finding, "volts", "V")} ${situationOf(finding, study)}`;
    if (finding.level === "stop") return `${gets}, but stands ${amount(finding, "maxV", "V")} at most: it is harmed.`;
    if (finding.measure["why"] === "gives-up")
      return `${place} gives up ${situationOf(finding, study)}: its volts sink below what it needs as soon as it draws.`;
    return `${gets}, but needs ${amount(finding, "minV", "V")}: it will not work properly.`;
  },
});

function wrongVolts(study: Study, use: ElementOf<"load">): Finding[] {
  const { spec } = use;
  const maxV = spec.maxV ?? spec.ratedV * MOST_OF_RATED;
  const { minV } = spec;
  const got = energisedIn(study, use);
  const highest = extreme(got, 1);
  if (highest && isOver(highest.volts, maxV)) return [harmed([partId(use)], highest, maxV)];
  const lowest = extreme(got, -1);
  if (lowest && minV !== null && isUnder(lowest.volts, minV)) {
    return [
      {
        at: [partId(use)],
        measure: { volts: lowest.volts, minV, situation: lowest.situation.id },
        remedies: [...lessDrop(study, use, lowest.situation, minV - lowest.volts), rightPart],
      },
    ];
  }
  const idle = got.find(({ volts, situation }) => volts > 0 && givesUp(use, situation));
  if (!idle) return [];
  const measure = { volts: idle.volts, minV, situation: idle.situation.id, why: "gives-up" };
  return [{ at: [partId(use)], measure, remedies: [rightPart] }];
}

/** Too many volts; or a coil for more volts than its source ever has, whatever is lost on the way (that is coil-weak's affair). */
function wrongCoilVolts(study: Study, coil: ElementOf<"coil">): Finding[] {
  const { maxV, pullInV } = coil.spec;
  const at = [partId(coil), addressOf(coil, coil.spec.b), addressOf(coil, coil.spec.a)];
  const got = energisedIn(study, coil);
  const highest = extreme(got, 1);
  if (highest && isOver(highest.volts, maxV)) return [harmed(at, highest, maxV)];
  const short = got.find(({ situation: { feedV } }) => isUnder(Math.max(feedV[coil.a]!, feedV[coil.b]!), pullInV));
  if (!short) return [];
  const measure = { volts: short.volts, minV: pullInV, situation: short.situation.id };
  return [{ at, measure, remedies: [rightPart] }];
}

interface Got {
  readonly volts: number;
  readonly situation: SituationReading;
}

/** Volts in each situation in which it is fed straight from a source; of a coil as an amount, whichever way round. */
function energisedIn(study: Study, element: ElementOf<"load"> | ElementOf<"coil">): readonly Got[] {
  return settledSituations(study).flatMap((situation): Got[] => {
    const { combination, solution } = situation;
    const volts = voltsBetween(solution, element.a, element.b);
    if (volts === null || !isEnergised(element, tiesIn(study.netlist, combination, solution))) return [];
    const isSigned = element.spec.type === "load" && element.spec.polarised;
    return isSigned && volts < 0 ? [] : [{ volts: Math.abs(volts), situation }];
  });
}

function extreme(got: readonly Got[], sign: 1 | -1): Got | null {
  return got.reduce<Got | null>((one, other) => (one && sign * (other.volts - one.volts) <= 0 ? one : other), null);
}

/** It is fed and should draw, but found no volts it can work at. */
function givesUp({ spec, branch }: ElementOf<"load">, { solution }: SituationReading): boolean {
  return spec.draw.law === "power" && spec.draw.watts !== null && branch >= 0 && solution.active[branch] === 0;
}

function harmed(at: readonly string[], { volts, situation }: Got, maxV: number): Finding {
  return { level: "stop", at, measure: { volts, maxV, situation: situation.id }, remedies: [rightPart] };
}

const rightPart = { id: "right-part", text: "Fit one made for these volts, or feed it through a converter", edits: [] };
