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

/** All wires of a drawing. `changed` are the boxes of parts that moved, came or went; `previous` holds earlier work by wire id. */
export function workWires(
  wires: readonly Wire[],
  partAt: ReadonlyMap<string, PartPicture>,
  previous: ReadonlyMap<string, WireWork>,
  changed: readonly Box[],
): Map<string, WireWork> {
  const parts = [...partAt.values()];
  const near = memoisedGrid(() => parts.map((part) => part.box));
  const routed = wires.flatMap((wire): Routed[] => {
    const from = terminalOf(wire.from, partAt);
    const to = terminalOf(wire.to, partAt);
    if (from === null || to === null) return [];
    const old = previous.get(wire.id);
    if (old !== undefined && old.wire === wire && isSameEnd(old.from, from) && isSameEnd(old.to, to)) {
      if (!changed.some((box) => boxesTouch(box, old.corridor)))
        return [{ wire, from, to, old, route: old.picture.route }];
    }
    const corridor = routeCorridor([from.at, ...(wire.via ?? []), to.at]);
    const boxes = near(corridor).map((index) => parts[index]!.box);
    return [{ wire, from, to, old: undefined, route: routeWire(from, to, wire.via ?? [], boxes) }];
  });
  const dirty = dirtyBoxes(routed, previous);
  const symbolsNear = (box: Box) => near(box).map((index) => parts[index]!.box);
  return finish(routed, dirty, symbolsNear);
}

interface Routed {
  readonly wire: Wire;
  readonly from: TerminalPicture;
  readonly to: TerminalPicture;
  /** Earlier work whose route still holds. */
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
    const picture: WirePicture = { id: wire.id, ends: [wire.from, wire.to], route, hops: hopsOver(route, otherRoutes), lettering };
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

/** Where routes changed: old and new extents of every wire that was worked out anew, came or went. */
function dirtyBoxes(routed: readonly Routed[], previous: ReadonlyMap<string, WireWork>): Box[] {
  const kept = new Set<string>();
  const boxes: Box[] = [];
  for (const { wire, old, route } of routed) {
    if (old !== undefined) kept.add(wire.id);
    else boxes.push(extentOfRoute(route));
  }
  if (kept.size < previous.size) for (const [id, work] of previous) if (!kept.has(id)) boxes.push(work.extent);
  return boxes;
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
