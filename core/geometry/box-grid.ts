import type { Box } from "./stroke.ts";

/** Numbered boxes in square cells, to find those near a place without looking at all of them. */
export class BoxGrid {
  private readonly cells = new Map<number, number[]>();
  private readonly cellSize: number;
  /** The last question each box was found for, so that none is told twice. */
  private readonly foundIn: number[] = [];
  private question = 0;

  /** `cellSize` in grid steps: about the size of the boxes put in. */
  constructor(cellSize: number) {
    this.cellSize = cellSize;
  }

  add(index: number, box: Box): void {
    this.eachCell(box, (key) => {
      const cell = this.cells.get(key);
      if (cell === undefined) this.cells.set(key, [index]);
      else cell.push(index);
    });
  }

  /** Takes out a box put in with the same number and place. */
  remove(index: number, box: Box): void {
    this.eachCell(box, (key) => {
      const cell = this.cells.get(key);
      const at = cell?.indexOf(index) ?? -1;
      if (at >= 0) cell?.splice(at, 1);
    });
  }

  /** Numbers of all boxes in the cells that `box` covers, each once; some may lie outside it. */
  near(box: Box): number[] {
    const found: number[] = [];
    const question = ++this.question;
    const look = (cell: readonly number[]) => {
      for (const index of cell) {
        if (this.foundIn[index] === question) continue;
        this.foundIn[index] = question;
        found.push(index);
      }
    };
    // Asked about more cells than there are, it is quicker to go through those there are.
    if (this.cellsIn(box) > this.cells.size) for (const cell of this.cells.values()) look(cell);
    else this.eachCell(box, (key) => look(this.cells.get(key) ?? []));
    return found;
  }

  private cellsIn({ left, top, right, bottom }: Box): number {
    return ((right - left) / this.cellSize + 1) * ((bottom - top) / this.cellSize + 1);
  }

  private eachCell(box: Box, visit: (key: number) => void): void {
    const size = this.cellSize;
    const [left, right] = [Math.floor(box.left / size), Math.floor(box.right / size)];
    const [top, bottom] = [Math.floor(box.top / size), Math.floor(box.bottom / size)];
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) visit(row * 65_536 + column);
    }
  }
}
