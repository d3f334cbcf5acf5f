import type { Solution } from "../circuit/index.ts";
import { engineRuns, isClosed, NodeSets, type Combination, type NetElement, type Netlist } from "../netlist/index.ts";

/** One source of the drawing as seen from a load: where it starts and what it would give with nothing connected. */
interface Feed {
  readonly node: number;
  readonly volts: number;
}

/**
 * For each node the highest open-circuit volts, over the zero of its network, of the sources that feed it in this combination:
 * by a direct way, or on the return side through a load. 0 where none does. Percentages of drop are of these volts.
 */
export function feedVolts(netlist: Netlist, combination: Combination, solution: Solution): Float64Array {
  const volts = new Float64Array(netlist.nodeCount);
  const paths = conductingPaths(netlist, combination, solution);
  const negative = negativeNodes(netlist, paths);
  for (const feed of feedsOf(netlist, combination, solution).sort((one, other) => other.volts - one.volts)) {
    spread(feed, paths, negative, volts);
  }
  return volts;
}

interface Paths {
  /** Neighbours by wires, closed contacts, fitted fuses and forward diodes. */
  readonly direct: readonly (readonly number[])[];
  /** Neighbours through loads and coils. */
  readonly loads: readonly (readonly number[])[];
}

function conductingPaths(netlist: Netlist, combination: Combination, solution: Solution): Paths {
  const empty = () => Array.from({ length: netlist.nodeCount }, (): number[] => []);
  const direct = empty();
  const loads = empty();
  const tie = (list: number[][], a: number, b: number) => {
    list[a]!.push(b);
    list[b]!.push(a);
  };
  for (const wire of netlist.wires) tie(direct, wire.from.node, wire.to.node);
  for (const element of netlist.elements) {
    const { spec, a, b } = element;
    if (element.branch < 0) continue;
    if (spec.type === "link" || spec.type === "protection") tie(direct, a, b);
    else if (spec.type === "contact" && isContactClosed(netlist, element, combination, solution)) tie(direct, a, b);
    else if (spec.type === "diode") direct[a]!.push(b);
    else if (spec.type === "load" || spec.type === "coil" || spec.type === "converter") tie(loads, a, b);
  }
  return { direct, loads };
}

function isContactClosed(netlist: Netlist, contact: NetElement, combination: Combination, solution: Solution): boolean {
  return contact.coil >= 0 ? solution.active[contact.branch] === 1 : isClosed(netlist, contact, combination);
}

/** Nodes joined to a source's negative by closed conductors: a return ends there. */
function negativeNodes(netlist: Netlist, { direct }: Paths): Uint8Array {
  const sets = new NodeSets(netlist.nodeCount);
  direct.forEach((neighbours, node) => neighbours.forEach((other) => sets.join(node, other)));
  const plus = new Set<number>();
  const minus = new Set<number>();
  for (const { spec, a, b, outA, outB } of netlist.elements) {
    if (spec.type === "source") {
      plus.add(sets.find(a));
      minus.add(sets.find(b));
    }
    if (spec.type === "converter") {
      plus.add(sets.find(outA));
      minus.add(sets.find(outB));
    }
  }
  return Uint8Array.from({ length: netlist.nodeCount }, (_, node) => {
    const set = sets.find(node);
    return minus.has(set) && !plus.has(set) ? 1 : 0;
  });
}

function feedsOf(netlist: Netlist, combination: Combination, solution: Solution): Feed[] {
  const running = engineRuns(combination);
  const sources = netlist.elements.filter(
    (element) => element.spec.type === "source" && isClosed(netlist, element, combination),
  );
  const emf = ({ spec }: NetElement) => (spec.type === "source" ? (running ? spec.runningV : spec.restV) : 0);
  const wired = new NodeSets(netlist.nodeCount);
  for (const wire of netlist.wires) wired.join(wire.from.node, wire.to.node);
  const belowV = (upper: NetElement, seen: ReadonlySet<NetElement>): number => {
    const lower = sources.find((other) => !seen.has(other) && wired.same(other.a, upper.b));
    return lower ? emf(lower) + belowV(lower, new Set([...seen, lower])) : 0;
  };
  const feeds = sources.map((source) => ({ node: source.a, volts: emf(source) + belowV(source, new Set([source])) }));
  for (const { spec, branch, outA } of netlist.elements) {
    if (spec.type === "converter" && solution.active[branch] === 1) feeds.push({ node: outA, volts: spec.outV });
  }
  return feeds;
}

function spread(feed: Feed, paths: Paths, negative: Uint8Array, volts: Float64Array): void {
  const seen = new Uint8Array(volts.length);
  const stack = [feed.node];
  seen[feed.node] = 1;
  while (stack.length > 0) {
    const node = stack.pop()!;
    volts[node] = Math.max(volts[node]!, feed.volts);
    const onwards = negative[node] === 1 ? paths.direct[node]! : [...paths.direct[node]!, ...paths.loads[node]!];
    for (const next of onwards) {
      if (seen[next] === 1) continue;
      seen[next] = 1;
      stack.push(next);
    }
  }
}
