import type { Box } from "./stroke.ts";

/** Numbered boxes in square cells, to find those near a place without looking at all of them. */
export class BoxGrid {
  private readonly cells = new Map<number, number[]>();
  private readonly cellSize: number;

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

  /** Numbers of all boxes in the cells that `box` covers, each once, in rising order; some may lie just outside it. */
  near(box: Box): number[] {
    const found: number[] = [];
    this.eachCell(box, (key) => {
      const cell = this.cells.get(key);
      if (cell !== undefined) found.push(...cell);
    });
    found.sort((a, b) => a - b);
    return found.filter((index, i) => i === 0 || index !== found[i - 1]);
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
