import { splitAddress, type Wire } from "../document/index.ts";
import {
  Area,
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
import type { Lettering, PartPicture, TerminalPicture, WirePicture } from "./types.ts";
import { wireLettering } from "./wire-lettering.ts";

/** A wire with its route, before it is known what crosses it. */
interface LaidWire {
  readonly wire: Wire;
  readonly from: TerminalPicture;
  readonly to: TerminalPicture;
  /** Ids of the parts those belong to. */
  readonly parts: readonly [from: string, to: string];
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

/** Parts that came, went, or look or stand otherwise than before, and where they did and do. */
export interface PartChanges {
  readonly ids: ReadonlySet<string>;
  readonly area: Area;
}

/** All wires of a drawing, each laid beside those before it. What holds is taken from `previous`, the same objects. */
export function workWires(
  wires: readonly Wire[],
  partAt: ReadonlyMap<string, PartPicture>,
  previous: WireWorks,
  changes: PartChanges,
): WireWorks {
  const earlier = isInOrder(wires, previous) ? previous : NO_WORKS;
  const standing = standingOf(partAt);
  const dirty = new Area(reachesOfGone(wires, earlier));
  const laid: (WireWork | LaidWire)[] = [];
  /** Of these only what other wires nearby have to do with them may have changed. */
  const kept = new Set<WireWork | LaidWire>();
  const nearby = new Nearby();
  const keep = (work: WireWork) => {
    laid.push(work);
    kept.add(work);
    nearby.add(work.reach);
  };
  for (const wire of wires) {
    const before = earlier.get(wire.id);
    const areSymbolsSame = before?.wire === wire && isUntouched(before, changes);
    if (areSymbolsSame && !dirty.touches(before.corridor)) {
      keep(before);
      continue;
    }
    const now = layWire(wire, partAt, standing, nearby, laid);
    if (now === null) continue;
    const isSameRoute = areSymbolsSame && areSamePoints(before.route, now.route);
    if (isSameRoute) keep(before);
    else {
      dirty.add(now.reach);
      if (before !== undefined) dirty.add(before.reach);
      laid.push(now);
      nearby.add(now.reach);
    }
  }
  return finished(laid, kept, nearby, dirty, standing, earlier);
}

function isUntouched({ parts, corridor }: WireWork, { ids, area }: PartChanges): boolean {
  return !ids.has(parts[0]) && !ids.has(parts[1]) && !area.touches(corridor);
}

const NO_WORKS: WireWorks = new Map();

/** What stands near a place on the sheet. */
interface Standing {
  /** Symbols and their names: what wires go round. */
  rooms(near: Box): Box[];
  /** These and the markings of terminals: what lettering keeps off. */
  taken(near: Box): Box[];
}

/** Second pass: hops, which hang on the routes of the wires nearby, and lettering, which also keeps off that of wires before. */
function finished(
  laid: readonly (WireWork | LaidWire)[],
  kept: ReadonlySet<WireWork | LaidWire>,
  nearby: Nearby,
  dirty: Area,
  standing: Standing,
  earlier: WireWorks,
): WireWorks {
  const works = new Map<string, WireWork>();
  const relettered = new Area();
  for (const [index, each] of laid.entries()) {
    const { wire, from, to, parts, route, reach } = each;
    if ("picture" in each && kept.has(each) && !dirty.touches(reach) && !relettered.touches(reach)) {
      works.set(wire.id, each);
      continue;
    }
    const others = nearby
      .touching(reach)
      .filter((other) => other !== index)
      .map((other) => laid[other]!);
    const otherRoutes = others.map((other) => other.route);
    const lettered = others.flatMap((other) => works.get(other.wire.id)?.picture.lettering.map(extentOf) ?? []);
    const lettering = wireLettering(wire, route, { taken: [...standing.taken(reach), ...lettered], otherRoutes });
    const hops = hopsOver(route, otherRoutes);
    const before = earlier.get(wire.id)?.picture;
    if (!isSameLettering(before?.lettering ?? [], lettering)) {
      for (const piece of [...(before?.lettering ?? []), ...lettering]) relettered.add(extentOf(piece));
    } else if ("picture" in each && kept.has(each) && areSamePoints(each.picture.hops, hops)) {
      works.set(wire.id, each);
      continue;
    }
    const extent = lettering.map(extentOf).reduce(unionBox, boxOfPoints(route)!);
    const picture: WirePicture = { id: wire.id, ends: [wire.from, wire.to], route, hops, lettering, extent };
    const corridor = unionBox(routeCorridor([from.at, ...(wire.via ?? []), to.at]), reach);
    works.set(wire.id, { wire, from, to, parts, route, reach, corridor, picture });
  }
  return works;
}

function standingOf(partAt: ReadonlyMap<string, PartPicture>): Standing {
  let parts: readonly PartPicture[] | null = null;
  let nearby: Nearby | null = null;
  const partsNear = (box: Box) => {
    const all = (parts ??= [...partAt.values()]);
    nearby ??= new Nearby(all.map((part) => part.extent));
    return nearby.touching(box).map((index) => all[index]!);
  };
  return {
    rooms: (box) => partsNear(box).flatMap(({ room }) => room.filter((each) => boxesTouch(each, box))),
    taken: (box) => partsNear(box).flatMap(({ box: symbol, lettering }) => [symbol, ...lettering.map(extentOf)]),
  };
}

/** A wire's route as it would be laid now; `null` when an end of it is not on the sheet. */
function layWire(
  wire: Wire,
  partAt: ReadonlyMap<string, PartPicture>,
  standing: Standing,
  nearby: Nearby,
  laid: readonly LaidWire[],
): LaidWire | null {
  const parts = [splitAddress(wire.from)[0], splitAddress(wire.to)[0]] as const;
  const from = partAt.get(parts[0])?.terminals.find(({ address }) => address === wire.from);
  const to = partAt.get(parts[1])?.terminals.find(({ address }) => address === wire.to);
  if (from === undefined || to === undefined) return null;
  const via = wire.via ?? [];
  const corridor = routeCorridor([from.at, ...via, to.at]);
  // Wires of one terminal may share their way: they are one piece of metal.
  const apart = nearby.touching(corridor).flatMap((index) => {
    const other = laid[index]!;
    return sharesEnd(other.wire, wire) ? [] : [other.route];
  });
  const route = routeWire(from, to, via, standing.rooms(corridor), apart);
  return { wire, from, to, parts, route, reach: reachOf(route) };
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

function isSameLettering(a: readonly Lettering[], b: readonly Lettering[]): boolean {
  const isSame = (one: Lettering, other: Lettering) =>
    one.text === other.text && one.upright === other.upright && areSamePoints([one.at], [other.at]);
  return a.length === b.length && a.every((one, i) => isSame(one, b[i]!));
}

function areSamePoints(a: readonly Point[], b: readonly Point[]): boolean {
  return a.length === b.length && a.every(([x, y], i) => x === b[i]![0] && y === b[i]![1]);
}

/** Lettering stands at most this far from its wire, and a bow reaches less. */
function reachOf(route: readonly Point[]): Box {
  return growBox(boxOfPoints(route) ?? { left: 0, top: 0, right: 0, bottom: 0 }, 1);
}
