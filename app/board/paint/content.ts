import { splitAddress } from "../../../core/document/index.ts";
import { type Box, growBox, boxHolds, type Point } from "../../../core/geometry/index.ts";
import type { WirePicture } from "../../../core/picture/index.ts";
import type { Lift } from "../board-overlay.ts";
import { STANDING } from "../marks.ts";
import { drawGrid, drawInk, type Ink, plainWire } from "./ink.ts";
import { LiveMarks, standingOf } from "./live-marks.ts";
import { drawLive } from "./live-paint.ts";
import { Scene, type ScenePart, type SceneWire } from "./scene.ts";

const NOTHING: ReadonlySet<string> = new Set();

/** What there is to draw on a box of the sheet: the drawing at rest, what the analysis says of it, and what a drag has taken up. */
export class Content {
  readonly scene = new Scene();
  readonly marks = new LiveMarks();
  private hidden: ReadonlySet<string> = NOTHING;
  private moving: ReadonlySet<string> = NOTHING;
  /** Joints that move with the lift. */
  private movingJoints: ReadonlySet<Point> = new Set();
  /** Where each wire begins, looked up once: pictures of wires are shared between drawings and never change. */
  private readonly fromTerminal = new WeakMap<WirePicture, { readonly part: string; readonly index: number }>();

  /** Takes lifted items out of the drawing at rest and puts back those no longer lifted; the boxes where that shows. */
  takeLift(lift: Lift | null): Box[] {
    const hidden = lift?.hidden ?? NOTHING;
    if (hidden === this.hidden) return [];
    const boxes = [...this.hidden, ...hidden].flatMap((id) => this.extentOf(id));
    this.hidden = hidden;
    this.moving = lift?.moving ?? NOTHING;
    this.movingJoints = this.jointsOf(this.moving);
    return boxes;
  }

  /** How many items move with the lift. */
  get movingCount(): number {
    return this.moving.size;
  }

  extentOf(id: string): Box[] {
    const item = this.scene.parts.get(id) ?? this.scene.wires.get(id);
    return item === null ? [] : [item.extent];
  }

  /** Paper, grid, and the drawing without what is lifted; `false` if there is only paper. */
  drawResting(ink: Ink, box: Box): boolean {
    ink.context.fillStyle = ink.palette.paper;
    ink.context.fillRect(box.left, box.top, box.right - box.left, box.bottom - box.top);
    const hasGrid = drawGrid(ink, box);
    const parts = this.resting(this.scene.parts.touching(box));
    const wires = this.resting(this.scene.wires.touching(box));
    drawItems(ink, parts, wires, this.jointsNear(box, false));
    return hasGrid || parts.length + wires.length > 0;
  }

  /** What the analysis says of the drawing at rest; `false` if nothing. */
  drawMarks(ink: Ink, box: Box): boolean {
    const parts = this.resting(this.scene.parts.touching(box));
    const wires = this.resting(this.scene.wires.touching(box));
    this.drawLive(ink, parts, wires);
    return parts.length + wires.length > 0;
  }

  /** What moves unchanged with the lift, where it was lifted from; `false` if nothing. */
  drawMoving(ink: Ink, box: Box): boolean {
    const isMoving = ({ picture }: ScenePart | SceneWire) => this.moving.has(picture.id);
    const parts = this.scene.parts.touching(box).filter(isMoving);
    const wires = this.scene.wires.touching(box).filter(isMoving);
    drawItems(ink, parts, wires, this.jointsNear(box, true));
    return parts.length + wires.length > 0;
  }

  /** The same all over the sheet, marks included: for a lift of a few items. */
  drawAllMoving(ink: Ink): void {
    const parts = [...this.moving].map((id) => this.scene.parts.get(id)).filter((part) => part !== null);
    const wires = [...this.moving].map((id) => this.scene.wires.get(id)).filter((wire) => wire !== null);
    drawItems(ink, parts, wires, [...this.movingJoints]);
    this.drawLive(ink, parts, wires);
  }

  private drawLive(ink: Ink, parts: readonly ScenePart[], wires: readonly SceneWire[]): void {
    drawLive(ink, this.marks, parts, wires, (wire) => this.standingOfWire(wire));
  }

  private standingOfWire({ picture }: SceneWire): number {
    let place = this.fromTerminal.get(picture);
    if (place === undefined) {
      const [from] = picture.ends;
      const [part] = splitAddress(from);
      const terminals = this.scene.parts.get(part)?.picture.terminals ?? [];
      place = { part, index: terminals.findIndex(({ address }) => address === from) };
      this.fromTerminal.set(picture, place);
    }
    const part = this.scene.parts.get(place.part);
    return part === null ? STANDING.unknown : standingOf(this.marks.terminal(part, place.index));
  }

  private resting<T extends ScenePart | SceneWire>(items: readonly T[]): readonly T[] {
    return this.hidden.size === 0 ? items : items.filter(({ picture }) => !this.hidden.has(picture.id));
  }

  private jointsNear(box: Box, isMoving: boolean): Point[] {
    const near = growBox(box, 1);
    const joints = this.scene.picture?.joints ?? [];
    return joints.filter((joint) => boxHolds(near, joint) && this.movingJoints.has(joint) === isMoving);
  }

  private jointsOf(ids: ReadonlySet<string>): ReadonlySet<Point> {
    const spots = new Set<string>();
    for (const id of ids)
      for (const { at } of this.scene.parts.get(id)?.picture.terminals ?? []) spots.add(at.join(" "));
    const joints = spots.size === 0 ? [] : (this.scene.picture?.joints ?? []);
    return new Set(joints.filter((joint) => spots.has(joint.join(" "))));
  }
}

function drawItems(ink: Ink, parts: readonly ScenePart[], wires: readonly SceneWire[], joints: readonly Point[]): void {
  drawInk(
    ink,
    parts.map(({ picture }) => picture),
    wires.map(({ picture }) => picture),
    joints,
  );
}

/** Wires that stretch with a lift. */
export function drawStretched(ink: Ink, { stretched }: Lift): void {
  drawInk(
    ink,
    [],
    stretched.map(({ route }) => plainWire(route)),
    [],
  );
}
