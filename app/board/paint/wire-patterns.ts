import type { Point } from "../../../core/geometry/index.ts";

/** Spacing of the patterns along a wire and their size across it. Grid steps. */
const CHEVRON = { every: 4, arm: 0.34 };
const TICK = { every: 0.6, arm: 0.26 };
const BEAD = { every: 1.1, radius: 0.2 };

/** Open arrow heads in the direction of the current; `isBackwards` against the route. */
export function traceChevrons(context: CanvasRenderingContext2D, route: readonly Point[], isBackwards: boolean): void {
  eachAlong(route, CHEVRON.every, (x, y, dx, dy) => {
    const sign = isBackwards ? -1 : 1;
    const [ax, ay] = [dx * sign * CHEVRON.arm, dy * sign * CHEVRON.arm];
    context.moveTo(x - ax - ay, y - ay + ax);
    context.lineTo(x + ax * 0.6, y + ay * 0.6);
    context.lineTo(x - ax + ay, y - ay - ax);
  });
}

/** Strokes across the wire: more current than it may carry. */
export function traceTicks(context: CanvasRenderingContext2D, route: readonly Point[]): void {
  eachAlong(route, TICK.every, (x, y, dx, dy) => {
    context.moveTo(x - dy * TICK.arm, y + dx * TICK.arm);
    context.lineTo(x + dy * TICK.arm, y - dx * TICK.arm);
  });
}

/** Rings along the wire: hot with nothing to protect it. */
export function traceBeads(context: CanvasRenderingContext2D, route: readonly Point[]): void {
  eachAlong(route, BEAD.every, (x, y) => {
    context.moveTo(x + BEAD.radius, y);
    context.arc(x, y, BEAD.radius, 0, 2 * Math.PI);
  });
}

/** Visits evenly spaced spots on each run of a route, clear of its corners; runs shorter than a spacing get one in the middle. */
function eachAlong(
  route: readonly Point[],
  every: number,
  visit: (x: number, y: number, dx: number, dy: number) => void,
): void {
  for (let i = 1; i < route.length; i++) {
    const [[ax, ay], [bx, by]] = [route[i - 1]!, route[i]!];
    const length = Math.abs(bx - ax) + Math.abs(by - ay);
    if (length < 0.8) continue;
    const [dx, dy] = [(bx - ax) / length, (by - ay) / length];
    const count = Math.max(1, Math.floor(length / every));
    for (let k = 0; k < count; k++) {
      const along = (length * (k + 0.5)) / count;
      visit(ax + dx * along, ay + dy * along, dx, dy);
    }
  }
}
