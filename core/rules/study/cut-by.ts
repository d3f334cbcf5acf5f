import type { NetElement } from "../../netlist/index.ts";
import type { SituationReading } from "../../readings/index.ts";
import type { Study } from "../rule.ts";
import { usesOf, type ElementOf } from "./elements.ts";
import { isEnergised, tiesIn, tiesWithout } from "./ties.ts";

/** Loads that work in this situation and would not if the device or contact were out: what runs through it and nothing else. */
export function usesCutBy(
  { netlist }: Study,
  situation: SituationReading,
  out: NetElement,
): readonly ElementOf<"load">[] {
  const { combination, solution } = situation;
  const before = tiesIn(netlist, combination, solution);
  const after = tiesWithout(netlist, combination, solution, { element: out });
  return usesOf(netlist).filter((use) => isEnergised(use, before) && !isEnergised(use, after));
}
