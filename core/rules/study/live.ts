import type { Solution } from "../../circuit/index.ts";
import type { Combination, Netlist } from "../../netlist/index.ts";
import { consumersOf } from "./elements.ts";
import { tiesWithout } from "./ties.ts";

/** Tells of a node whether it is hot with some wires away: by a direct way, or through loads and coils where no return holds it down. */
export function isHotThroughLoads(
  netlist: Netlist,
  combination: Combination,
  solution: Solution,
  wires: ReadonlySet<number>,
): (node: number) => boolean {
  const ties = tiesWithout(netlist, combination, solution, { wires });
  const passes = consumersOf(netlist).filter(({ spec }) => spec.type !== "converter");
  const hot = new Set<number>();
  const isHot = (node: number) => ties.onPlus(node) || hot.has(ties.classOf(node));
  for (let size = -1; size !== hot.size;) {
    size = hot.size;
    for (const { a, b } of passes) {
      if (isHot(a) && !ties.onMinus(b)) hot.add(ties.classOf(b));
      if (isHot(b) && !ties.onMinus(a)) hot.add(ties.classOf(a));
    }
  }
  return isHot;
}
