import type { Point } from "../../core/geometry/index.ts";

/** Grid steps from the terminal: near enough to belong to it, far enough to leave the terminal itself free for the next wire. */
const AWAY = 1;

/** Where a selected wire's two ends are taken hold of: on the wire, a little away from its terminals. */
export function endHandles(route: readonly Point[]): readonly [from: Point, to: Point] {
  return [inwards(route[0]!, route[1]!), inwards(route.at(-1)!, route.at(-2)!)];
}

function inwards([x, y]: Point, [towardsX, towardsY]: Point): Point {
  const length = Math.hypot(towardsX - x, towardsY - y);
  const share = length === 0 ? 0 : Math.min(AWAY, length / 3) / length;
  return [x + (towardsX - x) * share, y + (towardsY - y) * share];
}
