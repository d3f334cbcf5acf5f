import { boxesTouch, boxHoldsBox, growBox, unionBox } from "./box.ts";
import { BoxGrid } from "./box-grid.ts";
import type { Box } from "./stroke.ts";

/** How far around a first question the answers to the next ones are looked out. Grid steps. */
const AROUND = 24;
/** Looking through all boxes more often than this, a grid is worth making. */
const MOST_SEARCHES = 6;
const CELL = 16;

/**
 * A growing list of boxes that can be asked which of them touch a place. Quick both for many questions all over the sheet and
 * for a few in one spot, as after a small edit.
 */
export class Nearby {
  private readonly boxes: Box[] = [];
  private grid: BoxGrid | null = null;
  /** The boxes in the spot the questions have been about so far. */
  private spot: { readonly region: Box; readonly found: number[] } | null = null;
  private searches = 0;

  constructor(boxes: Iterable<Box> = []) {
    for (const box of boxes) this.boxes.push(box);
  }

  /** Puts a box in under the next number. */
  add(box: Box): void {
    const index = this.boxes.push(box) - 1;
    this.grid?.add(index, box);
    if (this.spot !== null && boxesTouch(this.spot.region, box)) this.spot.found.push(index);
  }

  /** Numbers of the boxes that touch `place`. */
  touching(place: Box): number[] {
    if (this.spot !== null && boxHoldsBox(this.spot.region, place)) return this.among(this.spot.found, place);
    if (this.searches < MOST_SEARCHES) {
      this.searches++;
      const around = growBox(place, AROUND);
      const region = this.spot === null ? around : unionBox(this.spot.region, around);
      this.spot = { region, found: this.among(this.boxes.keys(), region) };
      return this.among(this.spot.found, place);
    }
    this.spot = null;
    this.grid ??= this.makeGrid();
    return this.among(this.grid.near(place), place);
  }

  private among(indexes: Iterable<number>, place: Box): number[] {
    const found: number[] = [];
    for (const index of indexes) if (boxesTouch(this.boxes[index]!, place)) found.push(index);
    return found;
  }

  private makeGrid(): BoxGrid {
    const grid = new BoxGrid(CELL);
    for (const [index, box] of this.boxes.entries()) grid.add(index, box);
    return grid;
  }
}
