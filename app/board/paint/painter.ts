import type { Box, Point } from "../../../core/geometry/index.ts";
import { moveBox } from "../../../core/geometry/index.ts";
import { splitAddress } from "../../../core/document/index.ts";
import type { Picture, WirePicture } from "../../../core/picture/index.ts";
import type { Lift } from "../board-overlay.ts";
import { STANDING } from "../marks.ts";
import { damageRects, type PixelRect } from "./damage.ts";
import type { Frame } from "./frame.ts";
import { drawGrid, drawInk, type Ink, plainWire } from "./ink.ts";
import { LiveMarks, standingOf } from "./live-marks.ts";
import { drawLive } from "./live-paint.ts";
import { overlayPieces, type Piece, runBoxes } from "./overlay-pieces.ts";
import { Scene, type ScenePart, type SceneWire } from "./scene.ts";
import { type MakeCanvas, TiledDrawing, type Viewport } from "./tiles.ts";

/** New tiles drawn in one frame; more would make the frame late. */
const TILES_A_FRAME = 2;
/** A lift of more items than this is kept as tiles of its own while it moves. */
const MANY = 40;
/** How far beyond the canvas tiles are drawn ahead while nothing else is to do. Device pixels. */
const AHEAD_PX = 256;
const NO_LIFT: ReadonlySet<string> = new Set();

/**
 * Paints the Board: the resting drawing from tiles, what the analysis says, and what gestures show on top. Draws on whatever
 * canvas context it is given and asks for nothing else. A frame that differs little from the last repaints only the spots
 * that differ.
 */
export class Painter {
  readonly scene = new Scene();
  private readonly marks = new LiveMarks();
  private readonly resting: TiledDrawing;
  private readonly lifted: TiledDrawing;
  /** Where the scene has changed since the last frame; `null`: all over. */
  private unpainted: Box[] | null = null;
  private last: Frame | null = null;
  private lastPieces: ReadonlyMap<string, Piece> = new Map();
  private hidden: ReadonlySet<string> = NO_LIFT;
  private moving: ReadonlySet<string> = NO_LIFT;
  /** Joints that move with the lift. */
  private movingJoints: ReadonlySet<Point> = new Set();
  /** Where each wire begins, looked up once: pictures of wires are shared between drawings and never change. */
  private readonly fromTerminal = new WeakMap<WirePicture, { readonly part: string; readonly index: number }>();
  private ink: Omit<Ink, "context" | "stepPx"> = { palette: NO_PALETTE, lettering: true };

  constructor(makeCanvas: MakeCanvas) {
    this.resting = new TiledDrawing(makeCanvas, true, (context, box, stepPx) =>
      this.drawResting({ ...this.ink, context, stepPx }, box),
    );
    this.lifted = new TiledDrawing(makeCanvas, false, (context, box, stepPx) =>
      this.drawLifted({ ...this.ink, context, stepPx }, box),
    );
  }

  /** Brings the scene in step with a picture before it is painted, so that gestures find what is there now. */
  takePictureIn(picture: Picture): void {
    if (this.scene.picture === picture) return;
    const changed = this.scene.update(picture);
    if (changed === null) this.unpainted = null;
    else this.unpainted?.push(...changed);
  }

  /** Forgets what is on the canvas, as after it was resized or lost: the next frame paints all of it. */
  invalidate(): void {
    this.last = null;
  }

  /** Forgets the tiles too, as when a typeface arrived late. */
  clear(): void {
    this.resting.clear();
    this.lifted.clear();
    this.last = null;
  }

  /** Paints a frame; whether another should follow although nothing changed (tiles are still to be made crisp). */
  paint(context: CanvasRenderingContext2D, frame: Frame): boolean {
    const viewport = viewportOf(frame);
    const changed = this.takeIn(frame, viewport);
    const isZooming = this.last !== null && this.last.view.scale !== frame.view.scale;
    const wasComplete = this.resting.isComplete(viewport);
    const isLeft = this.fillTiles(viewport, isZooming);
    const pieces = new Map(overlayPieces(frame, this.scene).map((piece) => [piece.key, piece]));
    const isGroupMoved = this.isManyLifted && this.last?.overlay.lift !== frame.overlay.lift;
    const isAll = changed === null || !wasComplete || isGroupMoved;
    const boxes = isAll ? null : [...changed, ...this.changedPieces(pieces, frame)];
    const rects = boxes === null ? null : damageRects(boxes, viewport);
    if (rects === null)
      this.paintRect(context, frame, viewport, pieces, { x: 0, y: 0, width: viewport.width, height: viewport.height });
    else for (const rect of rects) this.paintRect(context, frame, viewport, pieces, rect);
    this.last = frame;
    this.lastPieces = pieces;
    return isLeft;
  }

  /** Brings scene, marks and tiles in step with the frame; boxes that changed, or `null` when all of it may have. */
  private takeIn(frame: Frame, viewport: Viewport): Box[] | null {
    const { last } = this;
    const isRestyled = last === null || last.palette !== frame.palette || last.lettering !== frame.lettering;
    if (isRestyled && (this.ink.palette !== frame.palette || this.ink.lettering !== frame.lettering)) {
      this.ink = { palette: frame.palette, lettering: frame.lettering };
      this.resting.clear();
      this.lifted.clear();
    }
    const redrawn = this.takePicture(frame, viewport);
    const isRemarked = this.marks.update(frame.marks, frame.revision, frame.picture);
    const isMoved = last === null || !isSameView(last, frame);
    return isRestyled || isMoved || isRemarked ? null : redrawn;
  }

  private takePicture(frame: Frame, viewport: Viewport): Box[] | null {
    this.takePictureIn(frame.picture);
    const changed = this.unpainted;
    this.unpainted = [];
    const swapped = this.takeLift(frame.overlay.lift, viewport);
    if (changed === null) {
      this.resting.clear();
      return null;
    }
    const boxes = [...changed, ...swapped];
    if (boxes.length > 0) this.resting.damage(boxes, viewport.stepPx);
    return boxes;
  }

  /** Takes lifted items out of the resting tiles when a drag begins and puts them back when it ends. */
  private takeLift(lift: Lift | null, viewport: Viewport): Box[] {
    const hidden = lift?.hidden ?? NO_LIFT;
    if (hidden === this.hidden) return [];
    const boxes = [...this.hidden, ...hidden].flatMap((id) => this.extentOf(id));
    this.hidden = hidden;
    this.moving = lift?.moving ?? NO_LIFT;
    this.movingJoints = this.jointsOf(this.moving);
    this.lifted.clear();
    if (this.isManyLifted) this.lifted.fill(viewport, Infinity);
    return boxes;
  }

  private jointsOf(ids: ReadonlySet<string>): ReadonlySet<Point> {
    const spots = new Set<string>();
    for (const id of ids)
      for (const { at } of this.scene.parts.get(id)?.picture.terminals ?? []) spots.add(at.join(" "));
    const joints = spots.size === 0 ? [] : (this.scene.picture?.joints ?? []);
    return new Set(joints.filter((joint) => spots.has(joint.join(" "))));
  }

  private get isManyLifted(): boolean {
    return this.moving.size > MANY;
  }

  private extentOf(id: string): Box[] {
    const item = this.scene.parts.get(id) ?? this.scene.wires.get(id);
    return item === null ? [] : [item.extent];
  }

  private fillTiles(viewport: Viewport, isZooming: boolean): boolean {
    if (this.resting.isEmpty) this.resting.fill(viewport, Infinity);
    if (isZooming) return !this.resting.isComplete(viewport);
    if (this.resting.fill(viewport, TILES_A_FRAME) > 0) return true;
    if (this.hidden.size > 0) return false;
    const ahead = {
      ...viewport,
      x: viewport.x + AHEAD_PX,
      y: viewport.y + AHEAD_PX,
      width: viewport.width + 2 * AHEAD_PX,
      height: viewport.height + 2 * AHEAD_PX,
    };
    return this.resting.fill(ahead, 1) > 0;
  }

  private changedPieces(pieces: ReadonlyMap<string, Piece>, frame: Frame): Box[] {
    const boxes: Box[] = [];
    for (const [key, piece] of pieces) if (!this.lastPieces.has(key)) boxes.push(...piece.boxes);
    for (const [key, piece] of this.lastPieces) if (!pieces.has(key)) boxes.push(...piece.boxes);
    const [before, after] = [this.last?.overlay.lift ?? null, frame.overlay.lift];
    if (before !== after) boxes.push(...this.liftBoxes(before), ...this.liftBoxes(after));
    return boxes;
  }

  private liftBoxes(lift: Lift | null): Box[] {
    if (lift === null) return [];
    const moved = [...lift.moving].flatMap((id) => this.extentOf(id).map((box) => moveBox(box, lift.dx, lift.dy)));
    return [...moved, ...lift.stretched.flatMap(({ route }) => runBoxes(route, 0.3))];
  }

  private paintRect(
    context: CanvasRenderingContext2D,
    frame: Frame,
    viewport: Viewport,
    pieces: ReadonlyMap<string, Piece>,
    rect: PixelRect,
  ): void {
    const { stepPx, x, y } = viewport;
    context.save();
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.beginPath();
    context.rect(rect.x, rect.y, rect.width, rect.height);
    context.clip();
    context.fillStyle = frame.palette.paper;
    if (!this.resting.isComplete(viewport)) context.fillRect(rect.x, rect.y, rect.width, rect.height);
    this.resting.copy(context, viewport, rect);
    const { lift } = frame.overlay;
    const box = sheetBox(rect, viewport);
    const ink = { context, stepPx, ...this.ink };
    context.setTransform(stepPx, 0, 0, stepPx, x, y);
    this.drawMarks(ink, this.notHidden(this.scene.parts.touching(box)), this.notHidden(this.scene.wires.touching(box)));
    if (lift !== null) this.drawLift(ink, viewport, rect, lift);
    for (const piece of pieces.values()) if (piece.boxes.some((each) => touches(each, box))) piece.draw(ink);
    context.restore();
  }

  private drawMarks(ink: Ink, parts: readonly ScenePart[], wires: readonly SceneWire[]): void {
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

  private drawLift(ink: Ink, viewport: Viewport, rect: PixelRect, lift: Lift): void {
    const { context, stepPx } = ink;
    const moved = {
      ...viewport,
      x: viewport.x + Math.round(lift.dx * stepPx),
      y: viewport.y + Math.round(lift.dy * stepPx),
    };
    if (this.isManyLifted) {
      context.setTransform(1, 0, 0, 1, 0, 0);
      this.lifted.fill(moved, TILES_A_FRAME);
      this.lifted.copy(context, moved, rect);
    } else {
      context.setTransform(stepPx, 0, 0, stepPx, moved.x, moved.y);
      const parts = [...lift.moving].map((id) => this.scene.parts.get(id)).filter((part) => part !== null);
      const wires = [...lift.moving].map((id) => this.scene.wires.get(id)).filter((wire) => wire !== null);
      drawInk(
        ink,
        parts.map(({ picture }) => picture),
        wires.map(({ picture }) => picture),
        [...this.movingJoints],
      );
      this.drawMarks(ink, parts, wires);
    }
    context.setTransform(stepPx, 0, 0, stepPx, viewport.x, viewport.y);
    drawInk(
      ink,
      [],
      lift.stretched.map(({ route }) => plainWire(route)),
      [],
    );
  }

  private drawResting(ink: Ink, box: Box): boolean {
    ink.context.fillStyle = ink.palette.paper;
    ink.context.fillRect(box.left, box.top, box.right - box.left, box.bottom - box.top);
    drawGrid(ink, box);
    const parts = this.notHidden(this.scene.parts.touching(box));
    const wires = this.notHidden(this.scene.wires.touching(box));
    const joints = (this.scene.picture?.joints ?? []).filter(
      (joint) => isNear(joint, box) && !this.movingJoints.has(joint),
    );
    drawInk(
      ink,
      parts.map(({ picture }) => picture),
      wires.map(({ picture }) => picture),
      joints,
    );
    return parts.length + wires.length > 0 || ink.stepPx >= 9;
  }

  private drawLifted(ink: Ink, box: Box): boolean {
    const parts = this.scene.parts.touching(box).filter(({ picture }) => this.moving.has(picture.id));
    const wires = this.scene.wires.touching(box).filter(({ picture }) => this.moving.has(picture.id));
    drawInk(
      ink,
      parts.map(({ picture }) => picture),
      wires.map(({ picture }) => picture),
      [...this.movingJoints].filter((joint) => isNear(joint, box)),
    );
    return parts.length + wires.length > 0;
  }

  private notHidden<T extends ScenePart | SceneWire>(items: readonly T[]): readonly T[] {
    return this.hidden.size === 0 ? items : items.filter(({ picture }) => !this.hidden.has(picture.id));
  }
}

const NO_PALETTE = {
  paper: "",
  grid: "",
  ink: "",
  faint: "",
  hot: "",
  rest: "",
  ground: "",
  on: "",
  stop: "",
  fix: "",
  select: "",
  preview: "",
};

/** Offsets are whole device pixels, so that tiles stay sharp and meet without seams. */
export function viewportOf({ view, width, height, pixelRatio }: Frame): Viewport {
  return {
    x: Math.round(view.x * pixelRatio),
    y: Math.round(view.y * pixelRatio),
    stepPx: view.scale * pixelRatio,
    width: Math.round(width * pixelRatio),
    height: Math.round(height * pixelRatio),
  };
}

function isSameView(a: Frame, b: Frame): boolean {
  return (
    a.view.x === b.view.x &&
    a.view.y === b.view.y &&
    a.view.scale === b.view.scale &&
    a.width === b.width &&
    a.height === b.height &&
    a.pixelRatio === b.pixelRatio
  );
}

function sheetBox(rect: PixelRect, { x, y, stepPx }: Viewport): Box {
  return {
    left: (rect.x - x) / stepPx,
    top: (rect.y - y) / stepPx,
    right: (rect.x + rect.width - x) / stepPx,
    bottom: (rect.y + rect.height - y) / stepPx,
  };
}

function touches(a: Box, b: Box): boolean {
  return a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;
}

function isNear([x, y]: Point, box: Box): boolean {
  return x > box.left - 1 && x < box.right + 1 && y > box.top - 1 && y < box.bottom + 1;
}
