import type { Box, Point } from "./stroke.ts";

/** Distance from a point to the segment a-b. Grid steps. */
export function distanceToSegment(point: Point, a: Point, b: Point): number {
  const [x, y] = nearestOnSegment(point, a, b);
  return Math.hypot(point[0] - x, point[1] - y);
}

/** The spot of the segment a-b nearest to a point. */
export function nearestOnSegment([px, py]: Point, [ax, ay]: Point, [bx, by]: Point): Point {
  const dx = bx - ax;
  const dy = by - ay;
  const lengthSquared = dx * dx + dy * dy;
  if (lengthSquared === 0) return [ax, ay];
  const along = Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / lengthSquared));
  return [ax + along * dx, ay + along * dy];
}

/** Nearest segment of a polyline: its number, the spot on it and how far off that is. `null` with under two points. */
export function nearestOnRoute(
  point: Point,
  route: readonly Point[],
): { readonly segment: number; readonly at: Point; readonly distance: number } | null {
  let best: { segment: number; at: Point; distance: number } | null = null;
  for (let segment = 0; segment + 1 < route.length; segment++) {
    const at = nearestOnSegment(point, route[segment]!, route[segment + 1]!);
    const distance = Math.hypot(point[0] - at[0], point[1] - at[1]);
    if (best === null || distance < best.distance) best = { segment, at, distance };
  }
  return best;
}

/**
 * Where a level segment a-b and an upright segment c-d cross inside both; `null` when they only touch at an end, miss, or
 * run the same way. Touching is no crossing: that is a corner or a joint, and gets no bow.
 */
export function crossingOf(a: Point, b: Point, c: Point, d: Point): Point | null {
  if (a[1] !== b[1] || c[0] !== d[0]) return null;
  const isInside = (value: number, from: number, to: number) =>
    value > Math.min(from, to) && value < Math.max(from, to);
  return isInside(c[0], a[0], b[0]) && isInside(a[1], c[1], d[1]) ? [c[0], a[1]] : null;
}

/** How far two upright or two level segments lie on each other; 0 when they cross, touch or run apart. Grid steps. */
export function commonLength(a: Point, b: Point, c: Point, d: Point): number {
  const along = a[1] === b[1] ? 0 : 1;
  const across = 1 - along;
  if (c[across] !== d[across] || a[across] !== c[across] || a[across] !== b[across]) return 0;
  const low = Math.max(Math.min(a[along], b[along]), Math.min(c[along], d[along]));
  const high = Math.min(Math.max(a[along], b[along]), Math.max(c[along], d[along]));
  return Math.max(0, high - low);
}

/** Whether an upright or level segment runs through the inside of a box (along its edge does not count). */
export function segmentEnters(a: Point, b: Point, box: Box): boolean {
  return (
    Math.max(a[0], b[0]) > box.left &&
    Math.min(a[0], b[0]) < box.right &&
    Math.max(a[1], b[1]) > box.top &&
    Math.min(a[1], b[1]) < box.bottom
  );
}

/** Length of a polyline. Grid steps. */
export function routeLength(route: readonly Point[]): number {
  let length = 0;
  for (let i = 1; i < route.length; i++) {
    length += Math.hypot(route[i]![0] - route[i - 1]![0], route[i]![1] - route[i - 1]![1]);
  }
  return length;
}

/** The polyline without repeated points and without points in the middle of a straight run; turning back is kept as it is. */
export function straightened(route: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of route) {
    const last = kept.at(-1);
    if (last !== undefined && last[0] === point[0] && last[1] === point[1]) continue;
    const before = kept.at(-2);
    if (before !== undefined && last !== undefined && isBetween(before, last, point)) kept.pop();
    kept.push(point);
  }
  return kept;
}

function isBetween(a: Point, b: Point, c: Point): boolean {
  const [dx, dy] = [Math.sign(b[0] - a[0]), Math.sign(b[1] - a[1])];
  return dx === Math.sign(c[0] - b[0]) && dy === Math.sign(c[1] - b[1]) && (dx === 0 || dy === 0);
}
