import { boxesTouch, boxHolds, boxOfPoints, growBox } from "./box.ts";
import { routeAround } from "./route-around.ts";
import { commonLength, routeLength, segmentEnters, straightened } from "./segment.ts";
import type { Box, Point } from "./stroke.ts";
import { oppositeSide, type Side, stepOf } from "./turning.ts";

/** A terminal as a wire meets it: where it is and which way the wire leaves; at a bare joint it may leave any way. */
export interface RouteEnd {
  readonly at: Point;
  readonly exit: Side | "any";
}

/** How far a wire looks for symbols to keep clear of, beyond the box around its ends and corners. Grid steps. */
export const ROUTE_REACH = 4;
/** Room kept between a wire and a symbol that is not its own. Grid steps. */
const CLEARANCE = 0.5;
/** What a corner, a run through a symbol and a turn straight back cost, as grid steps of wire. */
const CORNER_COST = 3;
const ENTER_COST = 60;
const BACK_COST = 10_000;
/** What a step of lying on another wire costs, and doing so at all. */
const OVERLAP_COST = 2;
const OVERLAP_AT_ALL_COST = 25;

/**
 * The corners of a wire's route, both ends included: level and upright runs only, leaving each terminal by its exit, through
 * every `via` point in order, with few corners, clear of `boxes` (symbols) where a way round is near, and beside the routes
 * `laid` before rather than on them where there is a lane.
 *
 * Grid steps. The answer hangs on the arguments alone, so a wire stays put while others change. Ends in the same spot with
 * no `via` give a step out and back.
 */
export function routeWire(
  from: RouteEnd,
  to: RouteEnd,
  via: readonly Point[],
  boxes: readonly Box[],
  laid: readonly Route[] = [],
): Point[] {
  const stops: readonly Point[] = [from.at, ...via, to.at];
  const near = boxesNear(stops, boxes);
  const alone = routeThrough(stops, from, to, near, []);
  return overlapOf(alone, laid) === 0 ? alone : routeThrough(stops, from, to, near, laid);
}

type Route = readonly Point[];

function routeThrough(
  stops: Route,
  from: RouteEnd,
  to: RouteEnd,
  boxes: readonly Box[],
  laid: readonly Route[],
): Point[] {
  const route: Point[] = [from.at];
  let heading: Side | null = null;
  for (let i = 1; i < stops.length; i++) {
    const leg = routeLeg({
      from: stops[i - 1]!,
      to: stops[i]!,
      exit: i === 1 ? sideOrNull(from.exit) : null,
      entry: i === stops.length - 1 ? sideOrNull(to.exit) : null,
      heading,
      boxes,
      laid,
    });
    route.push(...leg.slice(1));
    heading = headingOf(route);
  }
  return straightened(route);
}

/** Length over which a route lies on others. */
function overlapOf(route: Route, laid: readonly Route[]): number {
  let length = 0;
  for (const other of laid) {
    for (let i = 1; i < route.length; i++) {
      for (let k = 1; k < other.length; k++) length += commonLength(route[i - 1]!, route[i]!, other[k - 1]!, other[k]!);
    }
  }
  return length;
}

function sideOrNull(exit: Side | "any"): Side | null {
  return exit === "any" ? null : exit;
}

/** Where a wire with these stops looks for symbols; symbols outside it cannot change its route. */
export function routeCorridor(stops: readonly Point[]): Box {
  return growBox(boxOfPoints(stops) ?? { left: 0, top: 0, right: 0, bottom: 0 }, ROUTE_REACH);
}

function boxesNear(stops: readonly Point[], boxes: readonly Box[]): Box[] {
  const corridor = routeCorridor(stops);
  return boxes.filter((box) => boxesTouch(box, corridor)).map((box) => growBox(box, CLEARANCE));
}

interface Leg {
  readonly from: Point;
  readonly to: Point;
  /** Side the first run must take, at a terminal. */
  readonly exit: Side | null;
  /** Side the last run must come from, at a terminal. */
  readonly entry: Side | null;
  /** How the route came here. */
  readonly heading: Side | null;
  readonly boxes: readonly Box[];
  readonly laid: readonly Route[];
}

function routeLeg(leg: Leg): readonly Point[] {
  const start = leg.exit === null ? leg.from : offset(leg.from, leg.exit);
  const end = leg.entry === null ? leg.to : offset(leg.to, leg.entry);
  let best: readonly Point[] = [];
  let bestCost = Infinity;
  for (const route of routesOf(leg, start, end)) {
    const cost = costOf(route, leg, bestCost);
    if (cost < bestCost) [best, bestCost] = [route, cost];
  }
  if (bestCost < ENTER_COST + inevitableCost(leg)) return best;
  const around = routeAround(
    start,
    end,
    leg.boxes,
    leg.exit ?? leg.heading,
    leg.entry === null ? null : oppositeSide(leg.entry),
  );
  if (around === null) return best;
  const detour = straightened([leg.from, ...around, leg.to]);
  return costOf(detour, leg, bestCost) < bestCost ? detour : best;
}

/** Ways to try: straight to the other end first, then with a step out of each terminal. */
function* routesOf(leg: Leg, start: Point, end: Point): Generator<readonly Point[]> {
  const { from, to } = leg;
  if (from[0] === to[0] || from[1] === to[1]) yield [from, to];
  yield straightened([from, [to[0], from[1]], to]);
  yield straightened([from, [from[0], to[1]], to]);
  for (const corners of shapes(start, end)) yield straightened([from, start, ...corners, end, to]);
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  yield straightened([from, [x, from[1]], [x, to[1]], to]);
  yield straightened([from, [from[0], y], [to[0], y], to]);
}

/** Corner lists between two points: two corners on one of several lanes between them, one corner, three runs round the outside. */
function* shapes(a: Point, b: Point): Generator<readonly Point[]> {
  const [left, right] = a[0] < b[0] ? [a[0], b[0]] : [b[0], a[0]];
  const [top, bottom] = a[1] < b[1] ? [a[1], b[1]] : [b[1], a[1]];
  const upright = (x: number): readonly Point[] => [
    [x, a[1]],
    [x, b[1]],
  ];
  const level = (y: number): readonly Point[] => [
    [a[0], y],
    [b[0], y],
  ];
  const laneX = a[1] + 2 * b[1];
  const laneY = a[0] + 2 * b[0];
  for (const x of lanesBetween(left, right, laneX)) yield upright(x);
  for (const y of lanesBetween(top, bottom, laneY)) yield level(y);
  yield [[b[0], a[1]]];
  yield [[a[0], b[1]]];
  for (let out = 0; out < 4; out++) {
    yield upright(right + remainder(laneX + out, 4));
    yield upright(left - remainder(laneX + out, 4));
    yield level(bottom + remainder(laneY + out, 4));
    yield level(top - remainder(laneY + out, 4));
  }
}

/**
 * Whole steps near the middle of a gap, or just the middle of a narrow one. Neighbours begin with different ones, so that
 * parallel wires don't lie on each other.
 */
function lanesBetween(low: number, high: number, key: number): number[] {
  const count = Math.min(5, 2 * Math.floor((high - low) / 3) + 1);
  if (count < 2) return [(low + high) / 2];
  const first = Math.floor((low + high) / 2) - (count - 1) / 2;
  return Array.from({ length: count }, (_, i) => first + remainder(key + i, count));
}

function remainder(value: number, by: number): number {
  const whole = Math.round(value);
  return ((whole % by) + by) % by;
}

/** What a route costs; infinity as soon as it is sure not to come in under `bound`. */
function costOf(route: readonly Point[], leg: Leg, bound: number): number {
  let cost = routeLength(route) + CORNER_COST * (route.length - 2) + turnCost(route, leg);
  if (cost >= bound) return Infinity;
  for (let i = 1; i < route.length; i++) {
    for (const box of leg.boxes) if (segmentEnters(route[i - 1]!, route[i]!, box)) cost += ENTER_COST;
    if (cost >= bound) return Infinity;
  }
  const overlap = overlapOf(route, leg.laid);
  if (overlap > 0) cost += OVERLAP_AT_ALL_COST + OVERLAP_COST * overlap;
  return cost;
}

function turnCost(route: readonly Point[], leg: Leg): number {
  let cost = 0;
  const first = sideOf(route[0]!, route[1]);
  if (leg.exit !== null && first !== leg.exit) cost += BACK_COST;
  if (leg.heading !== null && first === oppositeSide(leg.heading)) cost += BACK_COST;
  if (leg.heading !== null && first !== leg.heading) cost += CORNER_COST;
  if (leg.entry !== null && sideOf(route.at(-1)!, route.at(-2)) !== leg.entry) cost += BACK_COST;
  for (let i = 2; i < route.length; i++) {
    if (turnsBack(route[i - 2]!, route[i - 1]!, route[i]!)) cost += BACK_COST;
  }
  return cost;
}

/** A terminal sits on its own symbol's edge: its first run always starts inside the room kept around that. */
function inevitableCost(leg: Leg): number {
  return leg.boxes.filter((box) => boxHolds(box, leg.from) || boxHolds(box, leg.to)).length * ENTER_COST;
}

function turnsBack(a: Point, b: Point, c: Point): boolean {
  return sideOf(a, b) === sideOf(c, b);
}

function headingOf(route: readonly Point[]): Side | null {
  const last = route.at(-1);
  return last === undefined || route.length < 2 ? null : sideOf(route.at(-2)!, last);
}

/** Which way `b` lies from `a`; `null` for the same spot or none. */
function sideOf(a: Point, b: Point | undefined): Side | null {
  if (b === undefined) return null;
  if (a[1] === b[1]) return b[0] > a[0] ? "right" : b[0] < a[0] ? "left" : null;
  return b[1] > a[1] ? "down" : "up";
}

function offset([x, y]: Point, side: Side): Point {
  const [dx, dy] = stepOf(side);
  return [x + dx, y + dy];
}
