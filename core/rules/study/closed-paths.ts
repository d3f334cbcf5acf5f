import { NodeSets, type Netlist } from "../../netlist/index.ts";
import { consumersOf } from "./elements.ts";
import { pathsOf, type Paths } from "./spread.ts";

/** Where current could come from and go to with every contact closed. */
export interface ClosedPaths {
  /** A source could push current to this node. */
  isFed(node: number): boolean;
  /** Current could run from a source to one of these nodes and from the other back to that source, or one joined to it. */
  isRing(a: number, b: number): boolean;
  /** Nodes from which current could get back to a negative with some out, not held up by a source that is always on. */
  sneakReturns(isOut: (node: number) => boolean): ReadonlySet<number>;
}

const kept = new WeakMap<Netlist, ClosedPaths>();

/** Loads in a string pass it on from plus to minus; coils and plain resistances either way. */
export function closedPaths(netlist: Netlist): ClosedPaths {
  let closed = kept.get(netlist);
  if (!closed) {
    const onward = onwardSteps(netlist);
    const backward = turned(onward);
    const frames = framesOf(netlist, onward, backward);
    const { fixed, negatives } = pathsOf(netlist);
    const held = heldUp(netlist);
    closed = {
      isFed: (node) => frames.some(({ fed }) => fed.has(node)),
      isRing: (a, b) => frames.some(({ fed, back }) => (fed.has(a) && back.has(b)) || (fed.has(b) && back.has(a))),
      sneakReturns: (isOut) => walk(backward, [...negatives], (node) => isOut(node) || held.has(fixed.find(node))),
    };
    kept.set(netlist, closed);
  }
  return closed;
}

/** Metal of sources that are always on: no current gets away through it. */
function heldUp(netlist: Netlist): Set<number> {
  const { fixed } = pathsOf(netlist);
  return new Set(
    netlist.elements.flatMap(({ spec, a }) => (spec.type === "source" && spec.when === null ? [fixed.find(a)] : [])),
  );
}

/** Sources that metal joins to one another, and what they could feed and get back from. */
interface Frame {
  readonly fed: ReadonlySet<number>;
  readonly back: ReadonlySet<number>;
}

function framesOf(netlist: Netlist, onward: Steps, backward: Steps): Frame[] {
  const { steps, fixed, plus, minus } = pathsOf(netlist);
  const isReturn = (node: number) => minus[fixed.find(node)] === 1 && plus[fixed.find(node)] === 0;
  const isSupply = (node: number) => plus[fixed.find(node)] === 1 && minus[fixed.find(node)] === 0;
  const joined = new NodeSets(netlist.nodeCount);
  steps.forEach((each, from) => each.forEach(({ to }) => joined.join(from, to)));
  const ends = sourceEnds(netlist);
  for (const { plus: positive, minus: negative } of ends) joined.join(positive, negative);
  return [...new Set(ends.map((end) => joined.find(end.plus)))].map((frame) => {
    const own = ends.filter((end) => joined.find(end.plus) === frame);
    return {
      fed: walk(
        onward,
        own.map((end) => end.plus),
        isReturn,
      ),
      back: walk(
        backward,
        own.map((end) => end.minus),
        isSupply,
      ),
    };
  });
}

function sourceEnds(netlist: Netlist): { plus: number; minus: number }[] {
  return netlist.elements.flatMap(({ spec, a, b, outA, outB }) => {
    if (spec.type === "source") return [{ plus: a, minus: b }];
    return spec.type === "converter" ? [{ plus: outA, minus: outB }] : [];
  });
}

type Steps = readonly (readonly number[])[];

function onwardSteps(netlist: Netlist): number[][] {
  const steps = pathsOf(netlist).steps.map((each: Paths["steps"][number]) => each.map(({ to }) => to));
  for (const { spec, a, b } of consumersOf(netlist)) {
    if (spec.type === "converter") continue;
    steps[a]!.push(b);
    if (spec.type === "coil" || spec.role === "resistance") steps[b]!.push(a);
  }
  return steps;
}

function turned(steps: Steps): number[][] {
  const back = steps.map((): number[] => []);
  steps.forEach((each, from) => each.forEach((to) => back[to]!.push(from)));
  return back;
}

function walk(steps: Steps, starts: readonly number[], isBarred: (node: number) => boolean): Set<number> {
  const region = new Set(starts);
  for (const node of region) for (const to of steps[node]!) if (!isBarred(to)) region.add(to);
  return region;
}
