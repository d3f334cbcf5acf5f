import { boxesOverlap, growBox, segmentEnters, type Box, type Point } from "../../geometry/index.ts";

/** What is still free on a page: lettering asks before it settles. Millimetres. */
export interface Clearings {
  blockBox(box: Box): void;
  /** A straight line in any direction, as heavy as a wire unless told. */
  blockLine(a: Point, b: Point, halfMm?: number): void;
  /** Inside the page and touching nothing. */
  isClear(box: Box): boolean;
  /** Whether a straight line from a to b keeps off all boxes and slanting lines blocked so far. */
  isLineClear(a: Point, b: Point): boolean;
}

const CELL_MM = 12;
/** More cells than any page is high. */
const ROW_CELLS = 4096;
/** Lettering keeps this far from anything else. */
const AIR_MM = 0.15;
/** More beside it, so that two pieces on one line don't read as one. */
const SIDE_AIR_MM = 0.8;
/** Half of the heaviest wire. */
const HALF_WIRE_MM = 0.55;

interface Obstacle {
  readonly box: Box;
  /** Ends of a slanting line; a box or a level or upright line has none. */
  readonly slant: readonly [Point, Point] | null;
}

export function clearings(page: Box): Clearings {
  const cells = new Map<number, Obstacle[]>();
  const boxes: Box[] = [];
  const slants: (readonly [Point, Point])[] = [];
  const block = (obstacle: Obstacle) => {
    for (const key of cellsOf(obstacle.box)) {
      const cell = cells.get(key);
      if (cell) cell.push(obstacle);
      else cells.set(key, [obstacle]);
    }
  };
  return {
    blockBox(box) {
      boxes.push(box);
      block({ box, slant: null });
    },
    blockLine(a, b, halfMm = HALF_WIRE_MM) {
      const box = {
        left: Math.min(a[0], b[0]),
        right: Math.max(a[0], b[0]),
        top: Math.min(a[1], b[1]),
        bottom: Math.max(a[1], b[1]),
      };
      const slant = a[0] === b[0] || a[1] === b[1] ? null : ([a, b] as const);
      if (slant) slants.push(slant);
      block({ box: growBox(box, halfMm), slant });
    },
    isClear(box) {
      if (box.left < page.left || box.right > page.right || box.top < page.top || box.bottom > page.bottom)
        return false;
      const aired = {
        left: box.left - SIDE_AIR_MM,
        right: box.right + SIDE_AIR_MM,
        top: box.top - AIR_MM,
        bottom: box.bottom + AIR_MM,
      };
      return cellsOf(aired).every((key) => !cells.get(key)?.some((obstacle) => hits(obstacle, aired)));
    },
    isLineClear: (a, b) =>
      !boxes.some((box) => lineEnters(a, b, box)) && !slants.some((slant) => linesCross(a, b, ...slant)),
  };
}

function hits(obstacle: Obstacle, box: Box): boolean {
  if (!boxesOverlap(obstacle.box, box)) return false;
  return obstacle.slant === null || lineEnters(...obstacle.slant, box);
}

/** Whether the segment a-b, in any direction, runs through the inside of the box: the box cut by both axes of the segment. */
function lineEnters(a: Point, b: Point, box: Box): boolean {
  if (!segmentEnters(a, b, box)) return false;
  const side = (x: number, y: number) => Math.sign((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]));
  const sides = [
    side(box.left, box.top),
    side(box.right, box.top),
    side(box.left, box.bottom),
    side(box.right, box.bottom),
  ];
  return !(sides.every((each) => each > 0) || sides.every((each) => each < 0));
}

function linesCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

function cellsOf(box: Box): number[] {
  const keys: number[] = [];
  for (let x = Math.floor(box.left / CELL_MM); x <= Math.floor(box.right / CELL_MM); x++) {
    for (let y = Math.floor(box.top / CELL_MM); y <= Math.floor(box.bottom / CELL_MM); y++)
      keys.push(x * ROW_CELLS + y);
  }
  return keys;
}
