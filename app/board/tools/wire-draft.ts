import type { GridPoint } from "../../../core/document/index.ts";
import { type Point, type RouteEnd, routeCorridor, routeWire } from "../../../core/geometry/index.ts";
import type { DraftWire } from "../board-overlay.ts";
import type { Scene } from "../paint/scene.ts";
import type { Joinable } from "./join.ts";
import { nearestTerminal, nearestWire, TERMINAL_REACH } from "./picking.ts";

/** What a wire drawn to this point would end on: the nearest terminal within reach, else a wire, else nothing. */
export function joinableAt(scene: Scene, at: Point, scale: number, isTouch: boolean, except?: string): Joinable | null {
  const reach = isTouch ? TERMINAL_REACH.touch : TERMINAL_REACH.mouse;
  const terminal = nearestTerminal(scene, at, reach.terminalPx / scale, except);
  if (terminal !== null) return { on: "terminal", address: terminal.address, at: terminal.at };
  const wire = nearestWire(scene, at, reach.wirePx / scale);
  return wire === null ? null : { on: "wire", id: wire.id, at: [Math.round(wire.at[0]), Math.round(wire.at[1])] };
}

/** The route a wire would take from one end, by these corners, to another end or to a free spot. */
export function draftRoute(
  scene: Scene,
  from: Joinable,
  via: readonly GridPoint[],
  to: Joinable | Point,
  id = "",
): DraftWire {
  const start = routeEnd(scene, from);
  const end: RouteEnd = isPoint(to) ? { at: snapped(to), exit: "any" } : routeEnd(scene, to);
  const boxes = scene.parts.touching(routeCorridor([start.at, ...via, end.at])).flatMap(({ picture }) => picture.room);
  return { id, route: routeWire(start, end, via, boxes) };
}

/** The grid point nearest to a spot. */
export function snapped([x, y]: Point): GridPoint {
  return [Math.round(x), Math.round(y)];
}

function routeEnd(scene: Scene, end: Joinable): RouteEnd {
  if (end.on === "wire") return { at: end.at, exit: "any" };
  const part = scene.parts.get(end.address.slice(0, end.address.indexOf(".")));
  return part?.picture.terminals.find(({ address }) => address === end.address) ?? { at: end.at, exit: "any" };
}

function isPoint(to: Joinable | Point): to is Point {
  return Array.isArray(to);
}
