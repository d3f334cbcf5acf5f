import type { Solution } from "../../circuit/index.ts";
import { ampsThrough, isOn, voltsBetween } from "../../readings/index.ts";
import type { ElementOf } from "./elements.ts";

/** Whether a load works in a settled combination. */
export function works(use: ElementOf<"load">, solution: Solution): boolean {
  const isDrawing = use.branch >= 0 && solution.active[use.branch] === 1;
  return isOn(use.spec, ampsThrough(solution, use), voltsBetween(solution, use.a, use.b), isDrawing);
}
