import type { Box, Point } from "./stroke.ts";
import { type Side, stepOf } from "./turning.ts";

const SIDES: readonly Side[] = ["right", "down", "left", "up"];
const CORNER_COST = 3;
/** Beyond this many symbols in the way a detour is not looked for. */
const MOST_BOXES = 32;
/** How a route comes to its start when it has no heading yet. */
const FRESH = 4;
const WAYS = 5;

/**
 * A right-angle way from `start` to `end` that enters none of `boxes`, shortest with corners counted, on the lines that pass
 * along the boxes on whole steps and through both ends; `null` when there is none or too much stands in the way. `heading` is
 * how the route arrives at `start`, `arrival` how it must go on at `end`: it never turns straight back against either.
 */
export function routeAround(
  start: Point,
  end: Point,
  boxes: readonly Box[],
  heading: Side | null,
  arrival: Side | null,
): Point[] | null {
  if (boxes.length > MOST_BOXES) return null;
  const mesh = meshOf(start, end, boxes);
  const goal = mesh.spotOf(end);
  const states = mesh.xs.length * mesh.ys.length * WAYS;
  const cost = new Float64Array(states).fill(Infinity);
  const cameFrom = new Int32Array(states).fill(-1);
  const open = new Frontier();
  const begin = mesh.spotOf(start) * WAYS + (heading === null ? FRESH : SIDES.indexOf(heading));
  cost[begin] = 0;
  open.add(begin, 0);
  for (let state = open.take(); state !== null; state = open.take()) {
    const spot = Math.floor(state / WAYS);
    const came = state % WAYS;
    if (spot === goal && (arrival === null || came === FRESH || SIDES[(came + 2) % 4] !== arrival)) {
      return trace(state, cameFrom, mesh);
    }
    for (let side = 0; side < 4; side++) {
      if (came !== FRESH && side === (came + 2) % 4) continue;
      const next = mesh.neighbour(spot, side);
      if (next < 0) continue;
      const corner = came === FRESH || came === side ? 0 : CORNER_COST;
      const total = cost[state]! + mesh.distance(spot, next) + corner;
      const key = next * WAYS + side;
      if (total >= cost[key]!) continue;
      cost[key] = total;
      cameFrom[key] = state;
      open.add(key, total + mesh.distance(next, goal));
    }
  }
  return null;
}

/** The lines a detour may take, their crossings numbered row by row, and which bits between crossings are free. */
interface Mesh {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  spotOf(point: Point): number;
  pointOf(spot: number): Point;
  /** The next crossing on a side, or -1 at the rim and where a box is in between. */
  neighbour(spot: number, side: number): number;
  distance(a: number, b: number): number;
}

function meshOf(start: Point, end: Point, boxes: readonly Box[]): Mesh {
  const xs = sortedLines([start[0], end[0], ...boxes.flatMap((box) => [Math.floor(box.left), Math.ceil(box.right)])]);
  const ys = sortedLines([start[1], end[1], ...boxes.flatMap((box) => [Math.floor(box.top), Math.ceil(box.bottom)])]);
  const width = xs.length;
  // Bit 1: shut to the right of a crossing; bit 2: shut below it.
  const shut = new Uint8Array(width * ys.length);
  for (const box of boxes) shutInside(box, xs, ys, shut);
  return {
    xs,
    ys,
    spotOf: ([x, y]) => ys.indexOf(y) * width + xs.indexOf(x),
    pointOf: (spot) => [xs[spot % width]!, ys[Math.floor(spot / width)]!],
    neighbour(spot, side) {
      const [dx, dy] = stepOf(SIDES[side]!);
      const column = (spot % width) + dx;
      const row = Math.floor(spot / width) + dy;
      if (column < 0 || row < 0 || column >= width || row >= ys.length) return -1;
      const next = row * width + column;
      const between = shut[Math.min(spot, next)]!;
      return (between & (dx === 0 ? 2 : 1)) === 0 ? next : -1;
    },
    distance: (a, b) =>
      Math.abs(xs[a % width]! - xs[b % width]!) + Math.abs(ys[Math.floor(a / width)]! - ys[Math.floor(b / width)]!),
  };
}

/** Shuts every bit of line that runs through the inside of a box. */
function shutInside(box: Box, xs: readonly number[], ys: readonly number[], shut: Uint8Array): void {
  for (const [row, y] of ys.entries()) {
    const below = ys[row + 1] ?? y;
    if (below <= box.top || y >= box.bottom) continue;
    for (const [column, x] of xs.entries()) {
      const right = xs[column + 1] ?? x;
      if (right <= box.left || x >= box.right) continue;
      const at = row * xs.length + column;
      if (y > box.top) shut[at]! |= 1;
      if (x > box.left) shut[at]! |= 2;
    }
  }
}

function sortedLines(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

function trace(last: number, cameFrom: Int32Array, mesh: Mesh): Point[] {
  const route: Point[] = [];
  for (let state = last; state >= 0; state = cameFrom[state]!) route.push(mesh.pointOf(Math.floor(state / WAYS)));
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
