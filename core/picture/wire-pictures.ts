import { splitAddress, type Wire } from "../document/index.ts";
import {
  type Box,
  boxesTouch,
  boxOfPoints,
  growBox,
  Nearby,
  type Point,
  routeCorridor,
  routeWire,
  unionBox,
} from "../geometry/index.ts";
import { extentOf } from "./extent-of.ts";
import { hopsOver } from "./hops.ts";
import type { PartPicture, TerminalPicture, WirePicture } from "./types.ts";
import { wireLettering } from "./wire-lettering.ts";

/** A wire with its route, before it is known what crosses it. */
interface LaidWire {
  readonly wire: Wire;
  readonly from: TerminalPicture;
  readonly to: TerminalPicture;
  readonly route: readonly Point[];
  /** Around the route with room for lettering; other wires outside it have no say in hops and lettering. */
  readonly reach: Box;
}

/** One wire worked out, with what it was worked out from, so that it can be kept while that stays the same. */
export interface WireWork extends LaidWire {
  /** Symbols outside this box have no say in the route or its lettering, nor have earlier wires in the route. */
  readonly corridor: Box;
  readonly picture: WirePicture;
}

/** The wires of an earlier picture: by id, in their order. */
export type WireWorks = ReadonlyMap<string, WireWork>;

/**
 * All wires of a drawing, each laid beside those before it. `changed` are the boxes of parts that moved, came or went.
 * What holds is taken from `previous`, the same objects.
 */
export function workWires(
  wires: readonly Wire[],
  partAt: ReadonlyMap<string, PartPicture>,
  previous: WireWorks,
  changed: readonly Box[],
): WireWorks {
  const earlier = isInOrder(wires, previous) ? previous : NO_WORKS;
  const symbols = symbolsOf(partAt);
  const dirty = reachesOfGone(wires, earlier);
  const laid: (WireWork | LaidWire)[] = [];
  /** Of these only what other wires nearby have to do with them may have changed. */
  const kept = new Set<WireWork | LaidWire>();
  const nearby = new Nearby();
  for (const wire of wires) {
    const from = terminalOf(wire, "from", partAt);
    const to = terminalOf(wire, "to", partAt);
    if (from === null || to === null) continue;
    const before = earlier.get(wire.id);
    const old = before !== undefined && isSameWire(before, wire, from, to) ? before : undefined;
    const areSymbolsSame = old !== undefined && !touchesAny(old.corridor, changed);
    if (areSymbolsSame && !touchesAny(old.corridor, dirty)) {
      laid.push(old);
      kept.add(old);
      nearby.add(old.reach);
      continue;
    }
    const route = layWire(wire, from, to, symbols, nearby, laid);
    const isSameRoute = old !== undefined && areSameRoutes(old.route, route);
    const reach = reachOf(route);
    if (!isSameRoute) dirty.push(reach, ...(before === undefined ? [] : [before.reach]));
    const now = isSameRoute && areSymbolsSame ? old : { wire, from, to, route, reach };
    if (now === old) kept.add(now);
    laid.push(now);
    nearby.add(reach);
  }
  return finished(laid, kept, nearby, dirty, symbols);
}

const NO_WORKS: WireWorks = new Map();

type SymbolsIn = (box: Box) => Box[];

/** Second pass: hops and lettering, which hang on the routes of the wires nearby. */
function finished(
  laid: readonly (WireWork | LaidWire)[],
  kept: ReadonlySet<WireWork | LaidWire>,
  nearby: Nearby,
  dirty: readonly Box[],
  symbols: SymbolsIn,
): WireWorks {
  const works = new Map<string, WireWork>();
  for (const [index, each] of laid.entries()) {
    if ("picture" in each && kept.has(each) && !touchesAny(each.reach, dirty)) {
      works.set(each.wire.id, each);
      continue;
    }
    const { wire, from, to, route, reach } = each;
    const otherRoutes = nearby.touching(reach).flatMap((other) => (other === index ? [] : [laid[other]!.route]));
    const lettering = wireLettering(wire, route, { symbols: symbols(reach), otherRoutes });
    const picture: WirePicture = {
      id: wire.id,
      ends: [wire.from, wire.to],
      route,
      hops: hopsOver(route, otherRoutes),
      lettering,
      extent: lettering.map(extentOf).reduce(unionBox, boxOfPoints(route)!),
    };
    const corridor = unionBox(routeCorridor([from.at, ...(wire.via ?? []), to.at]), reach);
    works.set(wire.id, { wire, from, to, route, reach, corridor, picture });
  }
  return works;
}

function symbolsOf(partAt: ReadonlyMap<string, PartPicture>): SymbolsIn {
  let rooms: readonly Box[] | null = null;
  let nearby: Nearby | null = null;
  return (box) => {
    const all = (rooms ??= [...partAt.values()].flatMap((part) => part.room));
    nearby ??= new Nearby(all);
    return nearby.touching(box).map((index) => all[index]!);
  };
}

function layWire(
  wire: Wire,
  from: TerminalPicture,
  to: TerminalPicture,
  symbols: SymbolsIn,
  nearby: Nearby,
  laid: readonly LaidWire[],
): Point[] {
  const via = wire.via ?? [];
  const corridor = routeCorridor([from.at, ...via, to.at]);
  // Wires of one terminal may share their way: they are one piece of metal.
  const apart = nearby.touching(corridor).flatMap((index) => {
    const other = laid[index]!;
    return sharesEnd(other.wire, wire) ? [] : [other.route];
  });
  return routeWire(from, to, via, symbols(corridor), apart);
}

function sharesEnd(a: Wire, b: Wire): boolean {
  return a.from === b.from || a.from === b.to || a.to === b.from || a.to === b.to;
}

/** Whether the wires that both have stand in the same order: only then do earlier ones still come first. */
function isInOrder(wires: readonly Wire[], previous: WireWorks): boolean {
  if (isSameList(wires, previous)) return true;
  const kept = wires.filter(({ id }) => previous.has(id));
  let next = 0;
  for (const id of previous.keys()) if (kept[next]?.id === id) next++;
  return next === kept.length;
}

function isSameList(wires: readonly Wire[], previous: WireWorks): boolean {
  if (wires.length !== previous.size) return false;
  let next = 0;
  for (const id of previous.keys()) if (wires[next++]!.id !== id) return false;
  return true;
}

function reachesOfGone(wires: readonly Wire[], previous: WireWorks): Box[] {
  if (isSameList(wires, previous)) return [];
  const here = new Set(wires.map(({ id }) => id));
  return [...previous].flatMap(([id, work]) => (here.has(id) ? [] : [work.reach]));
}

function isSameWire(old: WireWork, wire: Wire, from: TerminalPicture, to: TerminalPicture): boolean {
  return old.wire === wire && isSameEnd(old.from, from) && isSameEnd(old.to, to);
}

function isSameEnd(a: TerminalPicture, b: TerminalPicture): boolean {
  return a === b || (a.exit === b.exit && a.at[0] === b.at[0] && a.at[1] === b.at[1]);
}

function areSameRoutes(a: readonly Point[], b: readonly Point[]): boolean {
  return a.length === b.length && a.every(([x, y], i) => x === b[i]![0] && y === b[i]![1]);
}

function touchesAny(box: Box, others: readonly Box[]): boolean {
  return others.some((other) => boxesTouch(other, box));
}

/** Lettering stands at most this far from its wire, and a bow reaches less. */
function reachOf(route: readonly Point[]): Box {
  return growBox(boxOfPoints(route) ?? { left: 0, top: 0, right: 0, bottom: 0 }, 1);
}

/** Which part and which of its terminals an address means, kept per wire: wires are frozen and shared between documents. */
const partIds = new WeakMap<Wire, { readonly from: string; readonly to: string }>();

function terminalOf(wire: Wire, end: "from" | "to", partAt: ReadonlyMap<string, PartPicture>): TerminalPicture | null {
  let ids = partIds.get(wire);
  if (ids === undefined) {
    ids = { from: splitAddress(wire.from)[0], to: splitAddress(wire.to)[0] };
    partIds.set(wire, ids);
  }
  const address = wire[end];
  return partAt.get(ids[end])?.terminals.find((terminal) => terminal.address === address) ?? null;
}
