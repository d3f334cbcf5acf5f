import type { Netlist } from "../../netlist/index.ts";
import { consumersOf } from "./elements.ts";
import { pathsOf, startNodes, type Paths } from "./spread.ts";

/** Where current could come from and go to with every contact closed. */
export interface ClosedPaths {
  /** A source could push current to this node. */
  isFed(node: number): boolean;
  /** Current from this node could get back to a source. */
  returns(node: number): boolean;
}

const kept = new WeakMap<Netlist, ClosedPaths>();

/** Loads in a string pass it on from plus to minus; coils and plain resistances either way. */
export function closedPaths(netlist: Netlist): ClosedPaths {
  let closed = kept.get(netlist);
  if (!closed) {
    const onward = onwardSteps(netlist);
    const { fixed, plus, minus, negatives } = pathsOf(netlist);
    const isReturn = (node: number) => minus[fixed.find(node)] === 1 && plus[fixed.find(node)] === 0;
    const isSupply = (node: number) => plus[fixed.find(node)] === 1 && minus[fixed.find(node)] === 0;
    const fed = walk(
      onward,
      startNodes(netlist).map(({ node }) => node),
      isReturn,
    );
    const back = walk(turned(onward), [...negatives], isSupply);
    closed = { isFed: (node) => fed.has(node), returns: (node) => back.has(node) };
    kept.set(netlist, closed);
  }
  return closed;
}

function onwardSteps(netlist: Netlist): number[][] {
  const steps = pathsOf(netlist).steps.map((each: Paths["steps"][number]) => each.map(({ to }) => to));
  for (const { spec, a, b } of consumersOf(netlist)) {
    if (spec.type === "converter") continue;
    steps[a]!.push(b);
    if (spec.type === "coil" || spec.role === "resistance") steps[b]!.push(a);
  }
  return steps;
}

function turned(steps: readonly (readonly number[])[]): number[][] {
  const back = steps.map((): number[] => []);
  steps.forEach((each, from) => each.forEach((to) => back[to]!.push(from)));
  return back;
}

function walk(
  steps: readonly (readonly number[])[],
  starts: readonly number[],
  isBarred: (node: number) => boolean,
): Set<number> {
  const region = new Set(starts);
  for (const node of region) for (const to of steps[node]!) if (!isBarred(to)) region.add(to);
  return region;
}
