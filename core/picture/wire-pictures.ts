import { splitAddress, type Wire } from "../document/index.ts";
import {
  type Box,
  boxesTouch,
  BoxGrid,
  boxOfPoints,
  growBox,
  routeCorridor,
  routeWire,
  type Point,
} from "../geometry/index.ts";
import { hopsOver } from "./hops.ts";
import type { PartPicture, TerminalPicture, WirePicture } from "./types.ts";
import { wireLettering } from "./wire-lettering.ts";

/** One wire worked out, with what it was worked out from, so that it can be kept while that stays the same. */
export interface WireWork {
  readonly wire: Wire;
  readonly from: TerminalPicture;
  readonly to: TerminalPicture;
  /** Symbols outside this box have no say in the route or its lettering. */
  readonly corridor: Box;
  /** Around the route and its lettering; other wires outside it have no say in hops and lettering. */
  readonly extent: Box;
  readonly picture: WirePicture;
}

const CELL = 16;

/**
 * All wires of a drawing, each laid beside those before it. `changed` are the boxes of parts that moved, came or went;
 * `previous` holds earlier work by wire id, in order.
 */
export function workWires(
  wires: readonly Wire[],
  partAt: ReadonlyMap<string, PartPicture>,
  previous: ReadonlyMap<string, WireWork>,
  changed: readonly Box[],
): Map<string, WireWork> {
  const rooms = [...partAt.values()].flatMap((part) => part.room);
  const nearRooms = memoisedGrid(() => rooms);
  const symbolsNear = (box: Box) => nearRooms(box).map((index) => rooms[index]!);
  const earlier = isInOrder(wires, previous) ? previous : new Map<string, WireWork>();
  const dirty = extentsOfGone(wires, earlier);
  const routed: Routed[] = [];
  const laid = new BoxGrid(CELL);
  for (const wire of wires) {
    const from = terminalOf(wire.from, partAt);
    const to = terminalOf(wire.to, partAt);
    if (from === null || to === null) continue;
    const old = stillSame(earlier.get(wire.id), wire, from, to);
    const touched = (box: Box) => (each: Box) => boxesTouch(each, box);
    const holds = old !== undefined && !changed.some(touched(old.corridor)) && !dirty.some(touched(old.corridor));
    const route = holds ? old.picture.route : layWire(wire, from, to, symbolsNear, laid, routed);
    const isSame = old !== undefined && (holds || isSameRoute(old.picture.route, route));
    if (!isSame) dirty.push(extentOfRoute(route), ...(earlier.has(wire.id) ? [earlier.get(wire.id)!.extent] : []));
    const symbolsHold = isSame && !changed.some(touched(old.corridor));
    laid.add(routed.length, extentOfRoute(route));
    routed.push({ wire, from, to, old: symbolsHold ? old : undefined, route });
  }
  return finish(routed, dirty, symbolsNear);
}

function stillSame(
  old: WireWork | undefined,
  wire: Wire,
  from: TerminalPicture,
  to: TerminalPicture,
): WireWork | undefined {
  return old !== undefined && old.wire === wire && isSameEnd(old.from, from) && isSameEnd(old.to, to) ? old : undefined;
}

function layWire(
  wire: Wire,
  from: TerminalPicture,
  to: TerminalPicture,
  symbolsNear: (box: Box) => Box[],
  laid: BoxGrid,
  routed: readonly Routed[],
): Point[] {
  const via = wire.via ?? [];
  const corridor = routeCorridor([from.at, ...via, to.at]);
  const others = laid.near(corridor).map((index) => routed[index]!);
  // Wires of one terminal may share their way: they are one piece of metal.
  const apart = others.filter((other) => !sharesEnd(other.wire, wire)).map((other) => other.route);
  return routeWire(from, to, via, symbolsNear(corridor), apart);
}

function sharesEnd(a: Wire, b: Wire): boolean {
  return a.from === b.from || a.from === b.to || a.to === b.from || a.to === b.to;
}

/** Whether the wires that both have stand in the same order: only then do earlier ones still come first. */
function isInOrder(wires: readonly Wire[], previous: ReadonlyMap<string, WireWork>): boolean {
  const kept = wires.filter(({ id }) => previous.has(id));
  let next = 0;
  for (const id of previous.keys()) if (kept[next]?.id === id) next++;
  return next === kept.length;
}

function extentsOfGone(wires: readonly Wire[], previous: ReadonlyMap<string, WireWork>): Box[] {
  const here = new Set(wires.map(({ id }) => id));
  return [...previous].filter(([id]) => !here.has(id)).map(([, work]) => work.extent);
}

function isSameRoute(a: readonly Point[], b: readonly Point[]): boolean {
  return a.length === b.length && a.every(([x, y], i) => x === b[i]![0] && y === b[i]![1]);
}

interface Routed {
  readonly wire: Wire;
  readonly from: TerminalPicture;
  readonly to: TerminalPicture;
  /** Earlier work that still holds but for what other wires nearby have to do with it. */
  readonly old: WireWork | undefined;
  readonly route: readonly Point[];
}

/** Second pass: hops and lettering, which hang on the routes of the wires nearby. */
function finish(
  routed: readonly Routed[],
  dirty: readonly Box[],
  symbolsNear: (box: Box) => Box[],
): Map<string, WireWork> {
  const near = memoisedGrid(() => routed.map(({ route }) => extentOfRoute(route)));
  const works = new Map<string, WireWork>();
  routed.forEach(({ wire, from, to, old, route }, index) => {
    if (old !== undefined && !dirty.some((box) => boxesTouch(box, old.extent))) {
      works.set(wire.id, old);
      return;
    }
    const extent = extentOfRoute(route);
    const otherRoutes = near(extent).flatMap((other) => (other === index ? [] : [routed[other]!.route]));
    const lettering = wireLettering(wire, route, { symbols: symbolsNear(extent), otherRoutes });
    const picture: WirePicture = {
      id: wire.id,
      ends: [wire.from, wire.to],
      route,
      hops: hopsOver(route, otherRoutes),
      lettering,
    };
    works.set(wire.id, {
      wire,
      from,
      to,
      corridor: routeCorridor([from.at, ...(wire.via ?? []), to.at, ...route]),
      extent,
      picture,
    });
  });
  return works;
}

function extentOfRoute(route: readonly Point[]): Box {
  return growBox(boxOfPoints(route) ?? { left: 0, top: 0, right: 0, bottom: 0 }, 1);
}

function memoisedGrid(boxes: () => readonly Box[]): (box: Box) => number[] {
  let grid: BoxGrid | null = null;
  return (box) => {
    if (grid === null) {
      grid = new BoxGrid(CELL);
      for (const [index, each] of boxes().entries()) grid.add(index, each);
    }
    return grid.near(box);
  };
}

function terminalOf(address: string, partAt: ReadonlyMap<string, PartPicture>): TerminalPicture | null {
  const part = partAt.get(splitAddress(address)[0]);
  return part?.terminals.find((terminal) => terminal.address === address) ?? null;
}

function isSameEnd(a: TerminalPicture, b: TerminalPicture): boolean {
  return a === b || (a.exit === b.exit && a.at[0] === b.at[0] && a.at[1] === b.at[1]);
}
