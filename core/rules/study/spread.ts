import { NodeSets, type NetElement, type Netlist, type NetWire } from "../../netlist/index.ts";
import { consumersOf } from "./elements.ts";

/** One step current could take. */
export interface Step {
  readonly to: number;
  readonly wire: NetWire | null;
  readonly element: NetElement | null;
}

/** The drawing with every contact closed, as metal: where current could go whatever the controls do. */
export interface Paths {
  readonly steps: readonly (readonly Step[])[];
  /** Metal joined without any contact. */
  readonly fixed: NodeSets;
  /** By `fixed` class: holds the positive, the negative of a source. */
  readonly plus: Uint8Array;
  readonly minus: Uint8Array;
  /** Nodes that are a source's negative themselves. */
  readonly negatives: ReadonlySet<number>;
  /** Metal joined with every contact closed. */
  readonly closed: NodeSets;
}

const kept = new WeakMap<Netlist, Paths>();

export function pathsOf(netlist: Netlist): Paths {
  let paths = kept.get(netlist);
  if (!paths) {
    paths = findPaths(netlist);
    kept.set(netlist, paths);
  }
  return paths;
}

function findPaths(netlist: Netlist): Paths {
  const steps = Array.from({ length: netlist.nodeCount }, (): Step[] => []);
  const fixed = new NodeSets(netlist.nodeCount);
  const plus = new Uint8Array(netlist.nodeCount);
  const minus = new Uint8Array(netlist.nodeCount);
  const negatives = new Set<number>();
  const closed = new NodeSets(netlist.nodeCount);
  const tie = (a: number, b: number, wire: NetWire | null, element: NetElement | null) => {
    steps[a]!.push({ to: b, wire, element });
    steps[b]!.push({ to: a, wire, element });
    closed.join(a, b);
  };
  for (const wire of netlist.wires) {
    tie(wire.from.node, wire.to.node, wire, null);
    fixed.join(wire.from.node, wire.to.node);
  }
  for (const element of netlist.elements) {
    const { spec, a, b } = element;
    const isShut = spec.type === "link" || (spec.type === "protection" && spec.closed);
    if (isShut) fixed.join(a, b);
    if (isShut || spec.type === "contact" || (spec.type === "protection" && spec.recloses)) tie(a, b, null, element);
    if (spec.type === "diode" && spec.suppresses === undefined) steps[a]!.push({ to: b, wire: null, element });
  }
  for (const { spec, a, b, outA, outB } of netlist.elements) {
    if (spec.type === "source") {
      plus[fixed.find(a)] = 1;
      minus[fixed.find(b)] = 1;
      negatives.add(b);
    }
    if (spec.type === "converter") {
      plus[fixed.find(outA)] = 1;
      minus[fixed.find(outB)] = 1;
      negatives.add(outB);
    }
  }
  return { steps, fixed, plus, minus, negatives, closed };
}

/** Where feeding begins: the positive of every source, switched ones included, and of every converter's output. */
export function startNodes(netlist: Netlist): readonly { readonly element: NetElement; readonly node: number }[] {
  return netlist.elements.flatMap((element) => {
    if (element.spec.type === "source") return [{ element, node: element.a }];
    return element.spec.type === "converter" ? [{ element, node: element.outA }] : [];
  });
}

/**
 * All nodes that metal at `start` could feed: over every contact and diode forward, not past a source's negative nor into the
 * metal of another source. `isBarred` shuts further steps.
 */
export function spreadFrom(
  netlist: Netlist,
  start: number,
  isBarred: (step: Step) => boolean = () => false,
): Set<number> {
  const { steps, fixed, plus, minus } = pathsOf(netlist);
  const home = fixed.find(start);
  const region = new Set([start]);
  for (const node of region) {
    for (const step of steps[node]!) {
      const one = fixed.find(step.to);
      const isForeign = one !== home && (plus[one] === 1 || minus[one] === 1);
      if (!isForeign && !isBarred(step)) region.add(step.to);
    }
  }
  return region;
}

/** Loads, coils and converters a source at this node could feed, by the end that is not on its negative. */
export function fedFrom(netlist: Netlist, node: number): ReturnType<typeof consumersOf> {
  const region = spreadFrom(netlist, node);
  return consumersOf(netlist).filter(({ spec, a, b }) => {
    if (spec.type === "load" && spec.role === "existing") return false;
    return region.has(a) !== region.has(b);
  });
}
