import type { Solution } from "../circuit/index.ts";
import type { NetElement } from "../netlist/index.ts";
import { ampsThrough } from "../readings/index.ts";
import { fuseOfAtLeast } from "./remedies/fuse-choice.ts";
import { largerDevice } from "./remedies/rerate-device.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { partId } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { amount, placeName, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

export const fuseBlows = defineRule({
  id: "fuse-blows",
  level: "fix",
  about:
    "A fuse, breaker, the vehicle's own fuse of a tapped wire or a converter carries more than its rating and lets go.",
  source: "The device's own rating",
  check: (study) => study.netlist.elements.flatMap((element) => blows(study, element)),
  say: (finding, study) =>
    `${placeName(finding, study)} carries ${amount(finding, "amps", "A")} ${situationOf(finding, study)}, over its ${amount(finding, "ratingA", "A")}: it lets go, and what it feeds goes dead.`,
});

/** Anything that opens or shuts down over a rating of its own. */
interface Device {
  readonly id: string;
  readonly ratingA: number;
  amps(solution: Solution): number;
}

function deviceOf(element: NetElement): Device | null {
  const { spec, branch } = element;
  const id = partId(element);
  const amps = (solution: Solution) => Math.abs(ampsThrough(solution, element));
  if (spec.type === "protection" && spec.ratingA !== null) {
    return { id: spec.terminal === "" ? id : `${id}.${spec.terminal}`, ratingA: spec.ratingA, amps };
  }
  if (spec.type === "source" && spec.fuseA != null) return { id, ratingA: spec.fuseA, amps };
  if (spec.type === "converter" && spec.maxA !== null) {
    return { id, ratingA: spec.maxA, amps: (solution) => solution.outputA[branch]! };
  }
  return null;
}

function blows(study: Study, element: NetElement): Finding[] {
  const device = deviceOf(element);
  if (!device) return [];
  const { id, ratingA, amps } = device;
  const worst = worstOf(study, ({ solution }) => amps(solution));
  if (!worst || !isOver(worst.value, ratingA)) return [];
  const larger = fuseOfAtLeast((worst.value * 100) / study.netlist.system.fuseLoadPercent);
  return [
    {
      at: [...new Set([id, partId(element)])],
      measure: { amps: worst.value, ratingA, situation: worst.situation.id },
      remedies: larger ? largerDevice(study, id, larger.ratingA) : [],
    },
  ];
}
