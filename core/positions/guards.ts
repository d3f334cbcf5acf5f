import { NodeSets, type Netlist, type NetWire } from "../netlist/index.ts";
import { lessProtected, worstReach, type Reach } from "./guard-search.ts";
import { sourceStarts, type SourceStart } from "./source-starts.ts";
import type { Guard, Way } from "./types.ts";
import { beyond, reachWithoutDevices, toFarEnd, unguardedDistances, type Distance } from "./unguarded.ts";
import { wayGraph, type WayGraph } from "./way-graph.ts";

/** How each wire is protected, worst case over every position of every contact. */
export interface WireGuard {
  readonly guard: Guard | null | undefined;
  readonly unguardedM: number | null;
  readonly ways: readonly Way[];
}

interface SourceReach {
  readonly start: SourceStart;
  readonly reach: readonly Reach[];
  readonly distances: readonly (Distance | undefined)[];
}

/** `wires` by wire number, `nodes` by node: `undefined` where no way from a source leads, a return. */
export interface Guards {
  readonly wires: readonly WireGuard[];
  readonly nodes: readonly (Guard | null | undefined)[];
}

export function guardsOf(netlist: Netlist): Guards {
  const graph = wayGraph(netlist);
  const starts = sourceStarts(netlist);
  const reaches = starts.map((start): SourceReach => ({
    start,
    reach: worstReach(graph, start),
    distances: start.own === undefined ? unguardedDistances(graph, start) : [],
  }));
  const wired = wiredSets(netlist);
  const wires = netlist.wires.map((wire) => {
    const ways = reaches.flatMap((one) => wayTo(graph, reaches, one, wire, wired) ?? []);
    const guard = ways.map((way): Reach => way.guard).reduce<Reach>(lessProtected, undefined);
    return { guard, unguardedM: guard === null ? shortestUnguarded(ways) : guard === undefined ? null : 0, ways };
  });
  const nodes = graph.steps.map((_, node) =>
    reaches.map(({ reach }) => reach[node]).reduce<Reach>(lessProtected, undefined),
  );
  return { wires, nodes };
}

/** Of all sources with no device on the way, the shortest; unknown as soon as one of them is. */
function shortestUnguarded(ways: readonly Way[]): number | null {
  const metres = ways.filter(({ guard }) => guard === null).map(({ unguardedM }) => unguardedM);
  return metres.includes(null) ? null : Math.min(...metres.map(Number));
}

function wiredSets(netlist: Netlist): NodeSets {
  const sets = new NodeSets(netlist.nodeCount);
  for (const wire of netlist.wires) sets.join(wire.from.node, wire.to.node);
  return sets;
}

function wayTo(
  graph: WayGraph,
  reaches: readonly SourceReach[],
  one: SourceReach,
  wire: NetWire,
  wired: NodeSets,
): Way | null {
  const guard = lessProtected(one.reach[wire.from.node], one.reach[wire.to.node]);
  if (guard === undefined) return null;
  const seriesLink = isSeriesLink(reaches, wire, wired);
  const far = guard === null ? toFarEnd(wire, one.distances) : null;
  const plain = { source: one.start.id, guard, seriesLink };
  if (!far)
    return {
      ...plain,
      unguardedM: guard === null ? null : 0,
      sheathed: false,
      onlyToDevices: false,
      unfusedEnd: false,
    };
  const behind = beyond(
    graph,
    reaches.map(({ start }) => start),
    one.start,
    wire,
    far.far,
  );
  return {
    ...plain,
    unguardedM: far.unknown ? null : far.metres,
    sheathed: far.sheathed,
    onlyToDevices: behind.onlyToDevices,
    unfusedEnd: behind.onlyDevice !== null && isUnfusedEnd(graph, reaches, one, behind.onlyDevice),
  };
}

/** From the positive of one battery to the negative of the next one up, by wires alone. */
function isSeriesLink(reaches: readonly SourceReach[], wire: NetWire, wired: NodeSets): boolean {
  const lowers = reaches.filter(({ start }) => wired.same(start.node, wire.from.node));
  return lowers.some(({ start }) =>
    reaches.some(
      ({ start: upper }) =>
        upper !== start &&
        upper.element.spec.type === "source" &&
        upper.element.spec.zero &&
        onPath(wire, start.node, upper.element.b),
    ),
  );
}

function onPath(wire: NetWire, plus: number, minus: number): boolean {
  const ends = [wire.from.node, wire.to.node];
  return ends.includes(plus) && ends.includes(minus);
}

/**
 * A link between two sources with one device in it is fused for the source the device is near. The other one's stretch, up to the
 * device, is protected by nothing: it is the unfused end. Where both are equally far the later source in the file is.
 */
function isUnfusedEnd(
  graph: WayGraph,
  reaches: readonly SourceReach[],
  one: SourceReach,
  { near, behind }: { near: number; behind: number },
): boolean {
  const otherSide = reachWithoutDevices(graph, behind, () => false);
  return reaches.some((other, index) => {
    if (other === one || other.start.own !== undefined || !otherSide.has(other.start.node)) return false;
    const ours = metresTo(one, near);
    const theirs = metresTo(other, behind);
    return ours === theirs ? reaches.indexOf(one) > index : ours > theirs;
  });
}

function metresTo(one: SourceReach, node: number): number {
  const distance = one.distances[node];
  return !distance || distance.unknown ? Infinity : distance.metres;
}
