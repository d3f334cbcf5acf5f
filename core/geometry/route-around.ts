import { segmentEnters } from "./segment.ts";
import type { Box, Point } from "./stroke.ts";
import { type Side, stepOf } from "./turning.ts";

const SIDES: readonly Side[] = ["right", "down", "left", "up"];
const CORNER_COST = 3;
/** Beyond this many symbols in the way a detour is not looked for. */
const MOST_BOXES = 24;

/**
 * A right-angle way from `start` to `end` that enters none of `boxes`, shortest with corners counted, on the lines that pass
 * half a step outside the boxes and through both ends; `null` when there is none or too much stands in the way. `heading` is how the
 * route arrives at `start`, `arrival` how it must leave `end`: it never turns straight back against either.
 */
export function routeAround(
  start: Point,
  end: Point,
  boxes: readonly Box[],
  heading: Side | null,
  arrival: Side | null,
): Point[] | null {
  if (boxes.length > MOST_BOXES) return null;
  const xs = sortedLines([start[0], end[0], ...boxes.flatMap((box) => [box.left - 0.5, box.right + 0.5])]);
  const ys = sortedLines([start[1], end[1], ...boxes.flatMap((box) => [box.top - 0.5, box.bottom + 0.5])]);
  const goal = ys.indexOf(end[1]) * xs.length + xs.indexOf(end[0]);
  const pointOf = (spot: number): Point => [xs[spot % xs.length]!, ys[Math.floor(spot / xs.length)]!];
  const cost = new Map<number, number>();
  const cameFrom = new Map<number, number>();
  const open = new Frontier();
  const begin =
    (ys.indexOf(start[1]) * xs.length + xs.indexOf(start[0])) * 5 + (heading === null ? 4 : SIDES.indexOf(heading));
  cost.set(begin, 0);
  open.add(begin, 0);
  for (let state = open.take(); state !== null; state = open.take()) {
    const spot = Math.floor(state / 5);
    const came = state % 5;
    if (spot === goal && (arrival === null || came === 4 || SIDES[(came + 2) % 4] !== arrival))
      return trace(state, cameFrom, pointOf);
    for (let side = 0; side < 4; side++) {
      if (came !== 4 && side === (came + 2) % 4) continue;
      const next = neighbour(spot, SIDES[side]!, xs.length, ys.length);
      if (next === null || boxes.some((box) => segmentEnters(pointOf(spot), pointOf(next), box))) continue;
      const total =
        cost.get(state)! + stretch(pointOf(spot), pointOf(next)) + (came === 4 || came === side ? 0 : CORNER_COST);
      const key = next * 5 + side;
      if (total >= (cost.get(key) ?? Infinity)) continue;
      cost.set(key, total);
      cameFrom.set(key, state);
      open.add(key, total);
    }
  }
  return null;
}

function sortedLines(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

function neighbour(spot: number, side: Side, width: number, height: number): number | null {
  const [dx, dy] = stepOf(side);
  const column = (spot % width) + dx;
  const row = Math.floor(spot / width) + dy;
  return column < 0 || row < 0 || column >= width || row >= height ? null : row * width + column;
}

function stretch(a: Point, b: Point): number {
  return Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]);
}

function trace(state: number, cameFrom: ReadonlyMap<number, number>, pointOf: (spot: number) => Point): Point[] {
  const route: Point[] = [];
  for (let at: number | undefined = state; at !== undefined; at = cameFrom.get(at))
    route.push(pointOf(Math.floor(at / 5)));
  return route.reverse();
}

/** States by cost, cheapest first; equal costs in the order they came, so that the answer is always the same. */
class Frontier {
  private readonly heap: { readonly state: number; readonly cost: number; readonly order: number }[] = [];
  private count = 0;

  add(state: number, cost: number): void {
    const { heap } = this;
    const item = { state, cost, order: this.count++ };
    let at = heap.push(item) - 1;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (!isBefore(item, heap[parent]!)) break;
      heap[at] = heap[parent]!;
      at = parent;
    }
    heap[at] = item;
  }

  take(): number | null {
    const { heap } = this;
    const first = heap[0];
    const last = heap.pop();
    if (first === undefined || last === undefined) return null;
    if (heap.length === 0) return first.state;
    let at = 0;
    for (let child = 1; child < heap.length; child = 2 * at + 1) {
      if (child + 1 < heap.length && isBefore(heap[child + 1]!, heap[child]!)) child++;
      if (!isBefore(heap[child]!, last)) break;
      heap[at] = heap[child]!;
      at = child;
    }
    heap[at] = last;
    return first.state;
  }
}

function isBefore(a: { cost: number; order: number }, b: { cost: number; order: number }): boolean {
  return a.cost < b.cost || (a.cost === b.cost && a.order < b.order);
}
