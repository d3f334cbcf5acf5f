import type { Document, GridPoint } from "../document/index.ts";
import { BoxGrid, boxesOverlap, growBox, moveBox, type Box, type Point } from "../geometry/index.ts";
import { standingPart } from "./standing-part.ts";

/** Rings searched around a place, two grid steps apart. */
const MOST_RINGS = 80;
/** Farthest from the middle of the sheet that a part is put by itself, grid steps. */
const FARTHEST = 90_000;

/** Room already taken on the sheet. */
export class TakenRoom {
  private readonly boxes: Box[] = [];
  private readonly grid = new BoxGrid(12);

  take(box: Box): void {
    this.grid.add(this.boxes.length, box);
    this.boxes.push(box);
  }

  isFree(box: Box): boolean {
    return this.grid.near(box).every((at) => !boxesOverlap(this.boxes[at]!, box));
  }

  /**
   * The origin nearest to `near`, in growing squares, where a thing of this extent (about its own origin) stands clear of all
   * that is taken. Whole grid steps. With no room anywhere around: `near` itself.
   */
  spotFor(room: Box, near: Point): GridPoint {
    const [x, y] = near.map((value) => Math.round(Math.min(Math.max(value, -FARTHEST), FARTHEST))) as [number, number];
    for (let ring = 0; ring <= MOST_RINGS; ring++) {
      for (const [dx, dy] of ringSteps(ring)) {
        if (this.isFree(moveBox(room, x + 2 * dx, y + 2 * dy))) return [x + 2 * dx, y + 2 * dy];
      }
    }
    return [x, y];
  }
}

/** A square ring of steps, those nearest its middle first. */
function ringSteps(radius: number): readonly Point[] {
  if (radius === 0) return [[0, 0]];
  const steps: Point[] = [];
  for (let along = 0; along <= radius; along++) {
    for (const side of along === 0 ? [1] : [1, -1]) {
      steps.push([radius, along * side], [along * side, radius], [-radius, along * side]);
      steps.push([along * side, -radius]);
    }
  }
  return steps;
}

/**
 * Where a part of this extent (its box about its own origin) can be dropped as near as can be to `near` without covering another
 * part or its lettering: its origin, whole grid steps.
 */
export function freeSpot(document: Document, box: Box, near: GridPoint): GridPoint {
  const taken = new TakenRoom();
  document.parts.forEach((part, at) => {
    if (part.at) taken.take(moveBox(standingPart(part, at).room, part.at[0], part.at[1]));
  });
  return taken.spotFor(growBox(box, 1), near);
}
