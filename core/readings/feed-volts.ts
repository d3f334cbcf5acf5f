import type { Solution } from "../circuit/index.ts";
import { engineRuns, isClosed, NodeSets, type Combination, type NetElement, type Netlist } from "../netlist/index.ts";

/** One source of the drawing as seen from a load: where it starts and what it would give with nothing connected. */
interface Feed {
  readonly node: number;
  readonly volts: number;
}

/** Open-circuit volts percentages are of, by node. */
export interface FeedVolts {
  /**
   * The highest, over the zero of its network, of the sources that feed the node in this combination: by a direct way, or through
   * a load. 0 where none does. A ground has the highest of all that meet in it.
   */
  readonly feedV: Float64Array;
  /** The highest that feed the loads whose current comes back by way of this node; 0 where none does. */
  readonly returnV: Float64Array;
}

export function feedVolts(netlist: Netlist, combination: Combination, solution: Solution): FeedVolts {
  const feedV = new Float64Array(netlist.nodeCount);
  const paths = conductingPaths(netlist, combination, solution);
  const metal = metalOf(netlist, paths);
  const negative = negativeNodes(netlist, metal);
  for (const feed of feedsOf(netlist, combination, solution, metal).sort((one, other) => other.volts - one.volts)) {
    spread(feed, paths, negative, feedV);
  }
  return { feedV, returnV: returnVolts(netlist, solution, negative, feedV) };
}

/** Less than this is leakage. Amps. */
const NO_CURRENT_A = 1e-6;

/** Follows each load's current from its return end on to the sources, the highest-fed load first. */
function returnVolts(netlist: Netlist, solution: Solution, negative: Uint8Array, feedV: Float64Array): Float64Array {
  const returnV = new Float64Array(netlist.nodeCount);
  const onwards = Array.from({ length: netlist.nodeCount }, (): number[] => []);
  const flow = (a: number, b: number, amps: number) => {
    if (Math.abs(amps) < NO_CURRENT_A) return;
    if (amps > 0) onwards[a]!.push(b);
    else onwards[b]!.push(a);
  };
  const loads: Feed[] = [];
  for (const { branch, from, to } of netlist.wires) flow(from.node, to.node, solution.branchA[branch]!);
  for (const { spec, branch, a, b } of netlist.elements) {
    if (branch < 0 || spec.type === "source") continue;
    const amps = solution.branchA[branch]!;
    if (spec.type !== "load" && spec.type !== "coil" && spec.type !== "converter") flow(a, b, amps);
    else if (Math.abs(amps) >= NO_CURRENT_A) loads.push({ node: amps > 0 ? b : a, volts: feedV[amps > 0 ? a : b]! });
  }
  for (const { node, volts } of loads.sort((one, other) => other.volts - one.volts)) {
    const stack = negative[node] === 1 && returnV[node] === 0 ? [node] : [];
    for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
      returnV[at] = volts;
      for (const next of onwards[at]!) if (returnV[next] === 0) stack.push(next);
    }
  }
  return returnV;
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
    else if (spec.type === "diode") {
      if (spec.suppresses === undefined) direct[a]!.push(b);
    } else if (spec.type === "load" || spec.type === "coil" || spec.type === "converter") tie(loads, a, b);
  }
  return { direct, loads };
}

function isContactClosed(netlist: Netlist, contact: NetElement, combination: Combination, solution: Solution): boolean {
  return contact.coil >= 0 ? solution.active[contact.branch] === 1 : isClosed(netlist, contact, combination);
}

/** What closed conductors join; a diode, which lets through one way, joins nothing. */
function metalOf(netlist: Netlist, { direct }: Paths): NodeSets {
  const sets = new NodeSets(netlist.nodeCount);
  direct.forEach((neighbours, node) => {
    for (const other of neighbours) if (direct[other]!.includes(node)) sets.join(node, other);
  });
  return sets;
}

/** Nodes joined to a source's negative by closed conductors: a return ends there. */
function negativeNodes(netlist: Netlist, sets: NodeSets): Uint8Array {
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

function feedsOf(netlist: Netlist, combination: Combination, solution: Solution, metal: NodeSets): Feed[] {
  const running = engineRuns(combination);
  const sources = netlist.elements.filter(
    (element) => element.spec.type === "source" && isClosed(netlist, element, combination),
  );
  const emf = ({ spec }: NetElement) => (spec.type === "source" ? (running ? spec.runningV : spec.restV) : 0);
  const belowV = (upper: NetElement, seen: ReadonlySet<NetElement>): number => {
    const lower = sources.find((other) => !seen.has(other) && metal.same(other.a, upper.b));
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
