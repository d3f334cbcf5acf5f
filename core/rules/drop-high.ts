import { ampsThrough, sourceVolts, voltsBetween, type SituationReading } from "../readings/index.ts";
import { lessDrop } from "./remedies/less-drop.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { partId, usesOf, type ElementOf } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { isEnergised, tiesIn } from "./study/ties.ts";
import { works } from "./study/working.ts";
import { amount, nameOf, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

export const dropHigh = defineRule({
  id: "drop-high",
  level: "fix",
  about: "Too many volts are lost on the way to a load and back: over 5 % is a caution, over 10 % a fault.",
  source: "A truck engine maker's 5 % (general wiring) and fire and ambulance specifications' 10 %; ABYC E-11",
  check: (study) => usesOf(study.netlist).flatMap((use) => starved(study, use)),
  say: (finding, study) =>
    `Only ${amount(finding, "volts", "V")} reaches ${nameOf(study, finding.at[0]!)} ${situationOf(finding, study)}: ${amount(finding, "lossV", "V")}, or ${amount(finding, "lossPercent", "")} %, is lost on the way there and back (${finding.measure["limitPercent"]} % is the limit).`,
});

function starved(study: Study, use: ElementOf<"load">): Finding[] {
  const { cautionDropPercent, faultDropPercent } = study.netlist.system;
  const worst = worstOf(study, (situation) => lossOf(study, use, situation)?.percent ?? null);
  if (!worst || !isOver(worst.value, cautionDropPercent)) return [];
  const isFault = isOver(worst.value, faultDropPercent);
  const { volts, sourceV } = lossOf(study, use, worst.situation)!;
  const lossV = sourceV - volts;
  return [
    {
      ...(isFault ? {} : { level: "advice" }),
      at: [partId(use)],
      measure: {
        volts,
        lossV,
        lossPercent: worst.value,
        limitPercent: isFault ? faultDropPercent : cautionDropPercent,
        situation: worst.situation.id,
      },
      remedies: lessDrop(study, use, worst.situation, lossV - (sourceV * cautionDropPercent) / 100),
    },
  ];
}

interface Loss {
  readonly volts: number;
  readonly sourceV: number;
  readonly percent: number;
}

/** Of a load that draws and works, or would if its volts did not sink. */
function lossOf(
  { netlist }: Study,
  use: ElementOf<"load">,
  { combination, solution, feedV }: SituationReading,
): Loss | null {
  const across = voltsBetween(solution, use.a, use.b);
  const volts = Math.abs(across ?? 0);
  const sourceV = sourceVolts(use, across, feedV);
  if (sourceV === 0 || ampsThrough(solution, use) === 0) return null;
  if (!works(use, solution) && !isEnergised(use, tiesIn(netlist, combination, solution))) return null;
  return { volts, sourceV, percent: ((sourceV - volts) / sourceV) * 100 };
}
