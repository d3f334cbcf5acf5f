import { boxOfPoints } from "./box.ts";
import type { Box, Point, Stroke } from "./stroke.ts";

export type Turn = 0 | 90 | 180 | 270;
export type Side = "left" | "right" | "up" | "down";

/** Where a symbol stands: flipped left to right first, then turned clockwise about its origin, then moved to `at`. */
export interface Stance {
  readonly at: Point;
  readonly turn: Turn;
  readonly flip: boolean;
}

const CLOCKWISE: readonly Side[] = ["right", "down", "left", "up"];
const STEP: Readonly<Record<Side, Point>> = { right: [1, 0], down: [0, 1], left: [-1, 0], up: [0, -1] };

/** One grid step towards a side. */
export function stepOf(side: Side): Point {
  return STEP[side];
}

export function oppositeSide(side: Side): Side {
  return CLOCKWISE[(CLOCKWISE.indexOf(side) + 2) % 4]!;
}

/** A point of the symbol as it stands on the sheet. Grid steps, y down. */
export function standPoint([x, y]: Point, { at, turn, flip }: Stance): Point {
  const across = flip ? -x : x;
  switch (turn) {
    case 0:
      return [at[0] + across, at[1] + y];
    case 90:
      return [at[0] - y, at[1] + across];
    case 180:
      return [at[0] - across, at[1] - y];
    case 270:
      return [at[0] + y, at[1] - across];
  }
}

/** The side a terminal faces once its symbol stands. */
export function standSide(side: Side, { turn, flip }: Stance): Side {
  const flipped = flip && (side === "left" || side === "right") ? oppositeSide(side) : side;
  return CLOCKWISE[(CLOCKWISE.indexOf(flipped) + turn / 90) % 4]!;
}

export function standBox(box: Box, stance: Stance): Box {
  const corners: readonly Point[] = [
    [box.left, box.top],
    [box.right, box.bottom],
  ];
  return boxOfPoints(corners.map((corner) => standPoint(corner, stance)))!;
}

/** A stroke of the symbol as it stands. Text keeps reading upright: only its place moves, and its anchor turns with its side. */
export function standStroke(stroke: Stroke, stance: Stance): Stroke {
  switch (stroke.shape) {
    case "line":
      return { ...stroke, points: stroke.points.map((point) => standPoint(point, stance)) };
    case "circle":
      return { ...stroke, centre: standPoint(stroke.centre, stance) };
    case "arc": {
      const centre = standPoint(stroke.centre, stance);
      const [start, end] = stance.flip ? [180 - stroke.end, 180 - stroke.start] : [stroke.start, stroke.end];
      return { ...stroke, centre, start: start + stance.turn, end: end + stance.turn };
    }
    case "text": {
      const anchor = standAnchor(stroke.anchor ?? "middle", stance);
      return { ...stroke, centre: standPoint(stroke.centre, stance), anchor };
    }
  }
}

/** Which end of the text is held: the far end once the symbol faces the other way, the middle when it stands upright. */
function standAnchor(anchor: "start" | "middle" | "end", stance: Stance): "start" | "middle" | "end" {
  if (anchor === "middle") return anchor;
  const side = standSide(anchor === "start" ? "right" : "left", stance);
  return side === "right" ? "start" : side === "left" ? "end" : "middle";
}
