import { boxesTouch } from "./box.ts";
import { BoxGrid } from "./box-grid.ts";
import type { Box } from "./stroke.ts";

/** Up to so many questions are answered by looking at every box; only then is a grid worth making. */
const FEW_QUESTIONS = 48;
const CELL = 16;

/** A growing list of boxes that can be asked which of them touch a place; cheap to make when few questions follow. */
export class Nearby {
  private readonly boxes: Box[] = [];
  private grid: BoxGrid | null = null;
  private questions = 0;

  constructor(boxes: Iterable<Box> = []) {
    for (const box of boxes) this.boxes.push(box);
  }

  /** Puts a box in under the next number. */
  add(box: Box): void {
    this.grid?.add(this.boxes.length, box);
    this.boxes.push(box);
  }

  /** Numbers of the boxes that touch `place`. */
  touching(place: Box): number[] {
    this.questions++;
    if (this.questions <= FEW_QUESTIONS) return this.among(this.boxes.keys(), place);
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
