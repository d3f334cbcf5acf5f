import { boxesTouch, unionBox } from "./box.ts";
import type { Box } from "./stroke.ts";

/** Spots of a sheet, quick to say of most boxes that they touch none of them. */
export class Area {
  private readonly boxes: Box[] = [];
  private hull: Box | null = null;

  constructor(boxes: readonly Box[] = []) {
    boxes.forEach((box) => this.add(box));
  }

  add(box: Box): void {
    this.boxes.push(box);
    this.hull = this.hull === null ? box : unionBox(this.hull, box);
  }

  /** Whether any spot shares area or an edge with a box. */
  touches(box: Box): boolean {
    if (this.hull === null || !boxesTouch(this.hull, box)) return false;
    for (const each of this.boxes) if (boxesTouch(each, box)) return true;
    return false;
  }
}
