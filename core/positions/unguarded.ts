import type { NetElement, NetWire } from "../netlist/index.ts";
import type { SourceStart } from "./source-starts.ts";
import { SeenStands, standAfter, type Stand, type WayGraph } from "./way-graph.ts";

/** Shortest way from a source to a node with no device on it. */
export interface Distance {
  readonly metres: number;
  /** A length on it is unknown; it was counted as 0. */
  readonly unknown: boolean;
  readonly sheathed: boolean;
}

interface Visit extends Distance {
  readonly node: number;
  readonly stand: Stand;
}

const MOST_STATES = 20_000;

/** By node; `undefined` where every way from this source has a device on it or none leads there. */
export function unguardedDistances(graph: WayGraph, start: SourceStart): (Distance | undefined)[] {
  const found: (Distance | undefined)[] = Array.from({ length: graph.steps.length }, () => undefined);
  const seen = new SeenStands();
  const open: Visit[] = [{ node: start.node, stand: new Map(), metres: 0, unknown: false, sheathed: true }];
  for (let states = 0; open.length > 0 && states < MOST_STATES; states++) {
    const visit = takeNearest(open);
    if (!seen.add(visit.node, visit.stand)) continue;
    found[visit.node] ??= visit;
    for (const { to, device, wire, needs } of graph.steps[visit.node]!) {
      if (device || graph.ends[to] === 1) continue;
      const stand = standAfter(visit.stand, needs);
      if (stand) open.push({ node: to, stand, ...longer(visit, wire) });
    }
  }
  return found;
}

function takeNearest(open: Visit[]): Visit {
  let nearest = 0;
  open.forEach(({ metres }, at) => {
    if (metres < open[nearest]!.metres) nearest = at;
  });
  return open.splice(nearest, 1)[0]!;
}

function longer(before: Distance, wire: NetWire | null): Distance {
  if (!wire) return { metres: before.metres, unknown: before.unknown, sheathed: before.sheathed };
  return {
    metres: before.metres + (wire.wire.metres ?? 0),
    unknown: before.unknown || wire.wire.metres === undefined,
    sheathed: before.sheathed && wire.wire.sheathed === true,
  };
}

/** To the far end of a wire by the shorter of its two directions; `null` when a source reaches neither end unguarded. */
export function toFarEnd(
  wire: NetWire,
  distances: readonly (Distance | undefined)[],
): (Distance & { far: number }) | null {
  const ways = [
    { near: wire.from.node, far: wire.to.node },
    { near: wire.to.node, far: wire.from.node },
  ].flatMap(({ near, far }) => {
    const distance = distances[near];
    return distance ? [{ ...longer(distance, wire), far }] : [];
  });
  const [one, other] = ways;
  if (!one) return null;
  return other && other.metres < one.metres ? other : one;
}

/** What lies beyond an unguarded wire, up to the first devices. */
export interface Beyond {
  /** Nothing but the first device or devices. */
  readonly onlyToDevices: boolean;
  /** The one device there is, with the node on our side of it; `null` when there are none or several. */
  readonly onlyDevice: { readonly device: NetElement; readonly near: number; readonly behind: number } | null;
}

/** Follows the net from the far end of a wire, away from the source, without passing any device. */
export function beyond(
  graph: WayGraph,
  starts: readonly SourceStart[],
  from: SourceStart,
  wire: NetWire,
  far: number,
): Beyond {
  const region = reachWithoutDevices(graph, far, (step) => step.wire === wire || step.to === from.node);
  const devices = new Map<number, { device: NetElement; near: number; behind: number }>();
  for (const node of region) {
    for (const { device, to } of graph.steps[node]!)
      if (device) devices.set(device.index, { device, near: node, behind: to });
  }
  const serves =
    starts.some((other) => other !== from && region.has(other.node)) ||
    [...region].some((node) => graph.served[node] === 1);
  const [first] = devices.values();
  return {
    onlyToDevices: devices.size > 0 && !serves,
    onlyDevice: devices.size === 1 && first ? first : null,
  };
}

/** Nodes joined to `from` by steps that pass no device. Contacts count as closed. */
export function reachWithoutDevices(
  graph: WayGraph,
  from: number,
  isBarred: (step: WayGraph["steps"][number][number]) => boolean,
): Set<number> {
  const region = new Set([from]);
  for (const node of region) {
    for (const step of graph.steps[node]!) {
      if (!step.device && graph.ends[step.to] === 0 && !isBarred(step)) region.add(step.to);
    }
  }
  return region;
}
