import type { Netlist, NetWire } from "../../netlist/index.ts";
import type { SituationReading } from "../../readings/index.ts";
import type { Study } from "../rule.ts";
import type { Consumer } from "./shared-returns.ts";
import { pathsOf, type Step } from "./spread.ts";

/**
 * Wires that feed a consumer and take its current back in a situation: the way that carries most from each of its ends, up to a
 * source; or those of its return alone. Empty where it draws nothing.
 */
export function supplyWires(
  study: Study,
  use: Consumer,
  { solution }: SituationReading,
  side: "both" | "return",
): readonly NetWire[] {
  const drawn = use.branch < 0 ? 0 : solution.branchA[use.branch]!;
  if (drawn === 0) return [];
  const [feedEnd, returnEnd] = drawn > 0 ? [use.a, use.b] : [use.b, use.a];
  const back = wiresFrom(study, returnEnd, solution.branchA);
  return side === "return" ? back : [...wiresFrom(study, feedEnd, solution.branchA), ...back];
}

function wiresFrom({ netlist }: Study, end: number, branchA: Float64Array): NetWire[] {
  const { steps } = pathsOf(netlist);
  const ends = sourceEnds(netlist);
  const seen = new Set([end]);
  const wires: NetWire[] = [];
  for (let node = end; !ends.has(node);) {
    let onward: Step | null = null;
    let mostA = 0;
    for (const step of steps[node]!) {
      const amps = seen.has(step.to) ? 0 : Math.abs(branchA[(step.wire ?? step.element)!.branch] ?? 0);
      if (amps > mostA) [onward, mostA] = [step, amps];
    }
    if (!onward) break;
    if (onward.wire) wires.push(onward.wire);
    node = onward.to;
    seen.add(node);
  }
  return wires;
}

const kept = new WeakMap<Netlist, ReadonlySet<number>>();

function sourceEnds(netlist: Netlist): ReadonlySet<number> {
  let ends = kept.get(netlist);
  if (!ends) {
    ends = new Set(
      netlist.elements.flatMap(({ spec, a, b, outA, outB }) =>
        spec.type === "source" ? [a, b] : spec.type === "converter" ? [outA, outB] : [],
      ),
    );
    kept.set(netlist, ends);
  }
  return ends;
}
