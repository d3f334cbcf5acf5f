import { ampsThrough, type SituationReading } from "../readings/index.ts";
import { fuseOfAtLeast } from "./remedies/fuse-choice.ts";
import { largerDevice } from "./remedies/rerate-device.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { usesCutBy } from "./study/cut-by.ts";
import { deviceId, elementsOf, partId, type ElementOf } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { amount, placeName, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

export const fuseLoaded = defineRule({
  id: "fuse-loaded",
  level: "fix",
  about: "A fuse or breaker carries more than 70 % of its rating for long; 60 % suits an engine bay, 80 % a cab.",
  source: "Two vehicle makers' body-builder guides: continuous load at most 70 % of the fuse rating",
  check: (study) => elementsOf(study.netlist, "protection").flatMap((device) => loaded(study, device)),
  say: (finding, study) =>
    `${placeName(finding, study)} carries ${amount(finding, "amps", "A")} for long ${situationOf(finding, study)}, ${amount(finding, "loadPercent", "")} % of its ${amount(finding, "ratingA", "A")} (${finding.measure["limitPercent"]} % is the limit): fuse and holder run hot and may let go on a long run.`,
});

function loaded(study: Study, device: ElementOf<"protection">): Finding[] {
  const { ratingA } = device.spec;
  const { fuseLoadPercent } = study.netlist.system;
  if (ratingA === null) return [];
  const limitA = (ratingA * fuseLoadPercent) / 100;
  const worst = worstOf(study, (situation) => {
    const amps = Math.abs(ampsThrough(situation.solution, device));
    return isOver(amps, limitA) ? amps - briefAmps(study, situation, device) : amps;
  });
  if (!worst || !isOver(worst.value, limitA)) return [];
  const loadPercent = (worst.value / ratingA) * 100;
  const larger = fuseOfAtLeast((worst.value * 100) / fuseLoadPercent);
  return [
    {
      at: [...new Set([deviceId(device), partId(device)])],
      measure: {
        amps: worst.value,
        ratingA,
        loadPercent,
        limitPercent: fuseLoadPercent,
        situation: worst.situation.id,
      },
      remedies: larger ? largerDevice(study, deviceId(device), larger.ratingA) : [],
    },
  ];
}

/** What runs through the device only for moments, such as a horn or a winch. */
function briefAmps(study: Study, situation: SituationReading, device: ElementOf<"protection">): number {
  return usesCutBy(study, situation, device)
    .filter(({ spec }) => !spec.continuous)
    .reduce((sum, use) => sum + Math.abs(ampsThrough(situation.solution, use)), 0);
}
