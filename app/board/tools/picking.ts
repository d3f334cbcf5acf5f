import {
  type Box,
  boxHolds,
  distanceToBox,
  growBox,
  nearestOnRoute,
  type Point,
} from "../../../core/geometry/index.ts";
import type { TerminalPicture } from "../../../core/picture/index.ts";
import type { BoardTarget } from "../board-controller.ts";
import type { Scene } from "../paint/scene.ts";

/** How far a pointer reaches, in CSS pixels. */
export interface Reach {
  readonly terminalPx: number;
  readonly wirePx: number;
  readonly partPx: number;
}

/** For pointing at whatever is there: a terminal counts only close by, so that parts can be taken hold of. */
export const NEAR_REACH: { readonly mouse: Reach; readonly touch: Reach } = {
  mouse: { terminalPx: 7, wirePx: 6, partPx: 2 },
  touch: { terminalPx: 14, wirePx: 18, partPx: 10 },
};

/** For joining and measuring: terminals attract. A gloved thumb needs 15 mm, which is 57 CSS pixels. */
export const TERMINAL_REACH: { readonly mouse: Reach; readonly touch: Reach } = {
  mouse: { terminalPx: 18, wirePx: 8, partPx: 0 },
  touch: { terminalPx: 57, wirePx: 30, partPx: 0 },
};

/** The nearest terminal within reach, else the nearest wire, else the part under the point, else the sheet. */
export function pick(scene: Scene, at: Point, scale: number, reach: Reach): BoardTarget {
  const terminal = nearestTerminal(scene, at, reach.terminalPx / scale);
  if (terminal !== null) return { type: "terminal", id: terminal.address, at: terminal.at };
  const part = nearestPart(scene, at, reach.partPx / scale);
  const wire = nearestWire(scene, at, reach.wirePx / scale);
  // Inside a symbol only a wire right under the pointer is meant.
  const isMeant = wire !== null && (part === null || part.distance > 0 || wire.distance * scale <= 4);
  if (isMeant) return { type: "wire", id: wire.id, at: wire.at };
  return part === null ? { type: "sheet", id: "", at } : { type: "part", id: part.id, at };
}

/** The terminal nearest to a point, within so many grid steps; `except` one. */
export function nearestTerminal(scene: Scene, at: Point, within: number, except?: string): TerminalPicture | null {
  let best: TerminalPicture | null = null;
  let bestDistance = within;
  for (const { picture } of scene.parts.touching(around(at, within))) {
    for (const terminal of picture.terminals) {
      const distance = Math.hypot(terminal.at[0] - at[0], terminal.at[1] - at[1]);
      if (distance > bestDistance || terminal.address === except) continue;
      if (distance < bestDistance || best === null) [best, bestDistance] = [terminal, distance];
    }
  }
  return best;
}

interface WireHit {
  readonly id: string;
  /** The spot on the wire, and the number of the run it is on. */
  readonly at: Point;
  readonly segment: number;
  readonly distance: number;
}

/** The wire nearest to a point, within so many grid steps. */
export function nearestWire(scene: Scene, at: Point, within: number, except?: string): WireHit | null {
  let best: WireHit | null = null;
  for (const { picture } of scene.wires.touching(around(at, within))) {
    if (picture.id === except) continue;
    const hit = nearestOnRoute(at, picture.route);
    if (hit === null || hit.distance > within || (best !== null && hit.distance >= best.distance)) continue;
    best = { id: picture.id, ...hit };
  }
  return best;
}

/** The part whose symbol is nearest; of several over each other the smallest, since the others can be reached elsewhere. */
function nearestPart(
  scene: Scene,
  at: Point,
  within: number,
): { readonly id: string; readonly distance: number } | null {
  let best: { id: string; distance: number; area: number } | null = null;
  for (const { picture } of scene.parts.touching(around(at, within))) {
    const distance = distanceToBox(picture.box, at);
    const area = (picture.box.right - picture.box.left) * (picture.box.bottom - picture.box.top);
    if (distance > within) continue;
    if (best === null || distance < best.distance || (distance === best.distance && area < best.area)) {
      best = { id: picture.id, distance, area };
    }
  }
  return best;
}

/** Ids of parts and wires that lie wholly inside a box. */
export function pickInside(scene: Scene, box: Box): string[] {
  const parts = scene.parts
    .touching(box)
    .filter(
      ({ picture }) =>
        boxHolds(box, [picture.box.left, picture.box.top]) && boxHolds(box, [picture.box.right, picture.box.bottom]),
    );
  const wires = scene.wires.touching(box).filter(({ picture }) => picture.route.every((point) => boxHolds(box, point)));
  return [...parts, ...wires].map(({ picture }) => picture.id);
}

function around([x, y]: Point, within: number): Box {
  return growBox({ left: x, top: y, right: x, bottom: y }, within);
}
