import { type Box, boxesTouch, boxHoldsBox, BoxGrid, growBox, unionBox } from "../../../core/geometry/index.ts";
import type { PartPicture, Picture, WirePicture } from "../../../core/picture/index.ts";

/** A part or a wire of the drawing with its room on the sheet and its place in document order. */
export interface SceneItem<P extends PartPicture | WirePicture> {
  readonly picture: P;
  /** All it draws, lettering included. Grid steps. */
  readonly extent: Box;
  /** Where it stands in its document: what the arrays of `BoardMarks` count by. */
  readonly order: number;
  /** Of a part: number of its first terminal in document order. */
  readonly firstTerminal: number;
}

export type ScenePart = SceneItem<PartPicture>;
export type SceneWire = SceneItem<WirePicture>;

const CELL = 12;
/** Room for line widths, bows and marks around what a part or wire draws. Grid steps. */
const LINE = 0.4;

/** With more changes than this the drawing counts as changed all over. */
const MOST_CHANGES = 600;

/** The drawing kept findable by place and by id. Taking in the next picture costs only what changed. */
export class Scene {
  readonly parts = new Shelfful<PartPicture>();
  readonly wires = new Shelfful<WirePicture>();
  picture: Picture | null = null;

  /** Takes in a picture; the boxes where the drawing changed, or `null` when all of it did. */
  update(picture: Picture): readonly Box[] | null {
    const isFirst = this.picture === null;
    this.picture = picture;
    const changed = [
      ...this.parts.update(picture.parts, (part) => part.terminals.length),
      ...this.wires.update(picture.wires, () => 0),
    ];
    return isFirst || changed.length > MOST_CHANGES ? null : changed;
  }
}

/** Items by number and by place. */
class Shelfful<P extends PartPicture | WirePicture> {
  private readonly slots: (SceneItem<P> | null)[] = [];
  private readonly slotOf = new Map<string, number>();
  private readonly free: number[] = [];
  private readonly grid = new BoxGrid(CELL);
  /** Holds every item; may be larger than need be. */
  private hull: Box | null = null;

  get(id: string): SceneItem<P> | null {
    const slot = this.slotOf.get(id);
    return slot === undefined ? null : (this.slots[slot] ?? null);
  }

  /** All items that may draw inside a box. */
  touching(box: Box): SceneItem<P>[] {
    if (this.hull !== null && boxHoldsBox(box, this.hull)) return this.all();
    const found: SceneItem<P>[] = [];
    for (const slot of this.grid.near(box)) {
      const item = this.slots[slot];
      if (item != null && boxesTouch(item.extent, box)) found.push(item);
    }
    return found;
  }

  all(): SceneItem<P>[] {
    return this.slots.filter((item) => item !== null);
  }

  update(pictures: readonly P[], terminalCount: (picture: P) => number): Box[] {
    const changed: Box[] = [];
    let firstTerminal = 0;
    const seen = new Set<number>();
    pictures.forEach((picture, order) => {
      const slot = this.slotOf.get(picture.id) ?? this.newSlot(picture.id);
      const old = this.slots[slot] ?? null;
      seen.add(slot);
      if (old === null || old.picture !== picture)
        this.replace(slot, old, { picture, extent: growBox(picture.extent, LINE), order, firstTerminal }, changed);
      else if (old.order !== order || old.firstTerminal !== firstTerminal)
        this.slots[slot] = { ...old, order, firstTerminal };
      firstTerminal += terminalCount(picture);
    });
    if (seen.size < this.slotOf.size) this.dropUnseen(seen, changed);
    return changed;
  }

  private newSlot(id: string): number {
    const slot = this.free.pop() ?? this.slots.push(null) - 1;
    this.slotOf.set(id, slot);
    return slot;
  }

  private replace(slot: number, old: SceneItem<P> | null, item: SceneItem<P>, changed: Box[]): void {
    if (old !== null) {
      this.grid.remove(slot, old.extent);
      changed.push(old.extent);
    }
    this.slots[slot] = item;
    this.grid.add(slot, item.extent);
    this.hull = this.hull === null ? item.extent : unionBox(this.hull, item.extent);
    changed.push(item.extent);
  }

  private dropUnseen(seen: ReadonlySet<number>, changed: Box[]): void {
    for (const [id, slot] of this.slotOf) {
      const item = this.slots[slot];
      if (seen.has(slot) || item == null) continue;
      this.grid.remove(slot, item.extent);
      changed.push(item.extent);
      this.slots[slot] = null;
      this.slotOf.delete(id);
      this.free.push(slot);
    }
  }
}
