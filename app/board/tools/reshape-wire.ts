import type { GridPoint, Transaction, Wire } from "../../../core/document/index.ts";
import type { Point } from "../../../core/geometry/index.ts";
import { straightened } from "../../../core/geometry/index.ts";

/** The corners of a wire once one of its runs has been moved sideways to pass through `to`: what its `via` is to be. */
export function viaAfterMovedRun(route: readonly Point[], segment: number, to: Point): GridPoint[] {
  const [a, b] = [route[segment]!, route[segment + 1]!];
  const isUpright = a[0] === b[0];
  const moved = (point: Point): Point => (isUpright ? [Math.round(to[0]), point[1]] : [point[0], Math.round(to[1])]);
  const before = route.slice(0, segment + 1);
  const after = route.slice(segment + 1);
  // A run that ends on a terminal keeps a bit of itself there and steps aside after it.
  const bend = (end: Point, away: Point): Point => {
    const step = Math.sign(isUpright ? away[1] - end[1] : away[0] - end[0]);
    return isUpright ? [end[0], end[1] + step] : [end[0] + step, end[1]];
  };
  const head = segment === 0 ? [a, bend(a, b), moved(bend(a, b))] : [...before.slice(0, -1), moved(a)];
  const tail = segment === route.length - 2 ? [moved(bend(b, a)), bend(b, a), b] : [moved(b), ...after.slice(1)];
  return cornersOf([...head, ...tail]);
}

/** The corners of a wire once one of them has been taken to `to`. */
export function viaAfterMovedCorner(route: readonly Point[], corner: number, to: Point): GridPoint[] {
  const corners = cornersOf(route);
  corners[corner - 1] = [Math.round(to[0]), Math.round(to[1])];
  return corners;
}

/** The wire by new corners, as one step to undo; no corners lets it find its own way again. */
export function reshaped(wire: Wire, via: readonly GridPoint[]): Transaction {
  const change = { via: via.length === 0 ? undefined : via };
  return { label: `Lay wire ${wire.id.toUpperCase()} another way`, edits: [{ op: "set-wire", id: wire.id, change }] };
}

function cornersOf(route: readonly Point[]): GridPoint[] {
  return straightened(route)
    .slice(1, -1)
    .map(([x, y]): GridPoint => [Math.round(x), Math.round(y)]);
}
