import { type Box, boxesTouch, moveBox } from "../../../core/geometry/index.ts";
import type { Picture } from "../../../core/picture/index.ts";
import type { Lift } from "../board-overlay.ts";
import type { Palette } from "../palette.ts";
import { Content, drawStretched } from "./content.ts";
import { damageRects, type PixelRect } from "./damage.ts";
import type { Frame } from "./frame.ts";
import type { Ink } from "./ink.ts";
import { overlayPieces, type Piece, runBoxes } from "./overlay-pieces.ts";
import type { Scene } from "./scene.ts";
import { type MakeCanvas, TILE_PX, TiledDrawing, type Viewport } from "./tiles.ts";

/** New tiles drawn in one frame; more would make the frame late. */
const TILES_A_FRAME = 2;
/** A lift of more items than this is kept as tiles of its own while it moves. */
const MANY = 40;
/** How far beyond the canvas tiles are drawn ahead while nothing else is to do. Device pixels. */
const AHEAD_PX = 256;

/** What tiles are drawn with; another one makes them all worthless. */
interface Style {
  readonly palette: Palette;
  readonly lettering: boolean;
  readonly pixelRatio: number;
}

/**
 * Paints the Board: the drawing and what the analysis says of it from tiles, and what gestures show on top. Draws on whatever
 * canvas context it is given and asks for nothing else. A frame that differs little from the last repaints only the spots
 * that differ.
 *
 * `resting` holds the drawing alone, so that a new answer of the analysis redraws none of it; `marked` holds drawing and
 * marks together, made of it while nothing else is to do, so that moving about is one copy.
 */
export class Painter {
  private readonly content = new Content();
  private readonly resting: TiledDrawing;
  private readonly marked: TiledDrawing;
  private readonly lifted: TiledDrawing;
  private style: Style | null = null;
  /** Where the scene has changed since the last frame; `null`: all over. */
  private unpainted: Box[] | null = null;
  private last: Frame | null = null;
  private lastPieces: ReadonlyMap<string, Piece> = new Map();

  constructor(makeCanvas: MakeCanvas) {
    const { content } = this;
    this.resting = new TiledDrawing(makeCanvas, true, (context, box, stepPx) =>
      content.drawResting(this.inkOn(context, stepPx), box),
    );
    this.marked = new TiledDrawing(makeCanvas, true, (context, box, stepPx) =>
      this.drawMarked(this.inkOn(context, stepPx), box, stepPx),
    );
    this.lifted = new TiledDrawing(makeCanvas, false, (context, box, stepPx) =>
      content.drawMoving(this.inkOn(context, stepPx), box),
    );
  }

  get scene(): Scene {
    return this.content.scene;
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
    for (const tiles of [this.resting, this.marked, this.lifted]) tiles.clear();
    this.last = null;
  }

  /** Paints a frame; whether another should follow although nothing changed (tiles are still to be made crisp). */
  paint(context: CanvasRenderingContext2D, frame: Frame): boolean {
    const viewport = viewportOf(frame);
    const changed = this.takeIn(frame, viewport);
    const wasComplete = this.marked.isComplete(viewport) || this.resting.isComplete(viewport);
    const isLeft = this.fillTiles(viewport, frame, changed === null);
    const pieces = new Map(overlayPieces(frame, this.scene).map((piece) => [piece.key, piece]));
    const isGroupMoved = this.isManyLifted && this.last?.overlay.lift !== frame.overlay.lift;
    const isAll = changed === null || !wasComplete || isGroupMoved;
    const boxes = isAll ? null : [...changed, ...this.changedPieces(pieces, frame)];
    const rects = (boxes === null ? null : damageRects(boxes, viewport)) ?? [
      { x: 0, y: 0, width: viewport.width, height: viewport.height },
    ];
    for (const rect of rects) this.paintRect(context, frame, viewport, pieces, rect);
    this.last = frame;
    this.lastPieces = pieces;
    return isLeft;
  }

  private inkOn(context: CanvasRenderingContext2D, stepPx: number): Ink {
    const { palette, lettering, pixelRatio } = this.style!;
    return { context, palette, lettering, stepPx: stepPx / pixelRatio };
  }

  /** Brings scene, marks and tiles in step with the frame; boxes that changed, or `null` when all of it may have. */
  private takeIn(frame: Frame, viewport: Viewport): Box[] | null {
    const isRestyled = this.takeStyle(frame);
    const redrawn = this.takePicture(frame, viewport);
    const isRemarked = this.content.marks.update(frame.marks, frame.revision, frame.picture);
    if (isRemarked) this.marked.clear();
    const isMoved = this.last === null || !isSameView(this.last, frame);
    return isRestyled || isMoved || isRemarked ? null : redrawn;
  }

  private takeStyle({ palette, lettering, pixelRatio }: Frame): boolean {
    const { style } = this;
    if (style?.palette === palette && style.lettering === lettering && style.pixelRatio === pixelRatio) return false;
    this.style = { palette, lettering, pixelRatio };
    this.clear();
    return true;
  }

  private takePicture(frame: Frame, viewport: Viewport): Box[] | null {
    this.takePictureIn(frame.picture);
    const changed = this.unpainted;
    this.unpainted = [];
    const swapped = this.content.takeLift(frame.overlay.lift);
    if (swapped.length > 0) {
      this.lifted.clear();
      if (this.isManyLifted) this.lifted.fill(viewport, Infinity);
    }
    if (changed === null) {
      this.resting.clear();
      this.marked.clear();
      return null;
    }
    const boxes = [...changed, ...swapped];
    if (boxes.length > 0) {
      this.resting.damage(boxes, viewport.stepPx);
      this.marked.damage(boxes, viewport.stepPx);
    }
    return boxes;
  }

  private get isManyLifted(): boolean {
    return this.content.movingCount > MANY;
  }

  /** Draws missing tiles as far as there is time for in a frame that may be all new; whether some are left for the next. */
  private fillTiles(viewport: Viewport, frame: Frame, isAllNew: boolean): boolean {
    if (this.resting.isEmpty) this.resting.fill(viewport, Infinity);
    const isMoving = this.last !== null && !isSameView(this.last, frame);
    if (isMoving && (this.last?.view.scale !== frame.view.scale || this.marked.isComplete(viewport))) return true;
    if (this.resting.fill(viewport, TILES_A_FRAME) > 0) return true;
    if (frame.overlay.lift !== null || isAllNew) return isAllNew;
    if (this.marked.fill(viewport, TILES_A_FRAME) > 0) return true;
    const ahead = {
      x: viewport.x + AHEAD_PX,
      y: viewport.y + AHEAD_PX,
      width: viewport.width + 2 * AHEAD_PX,
      height: viewport.height + 2 * AHEAD_PX,
    };
    return this.marked.fill({ ...viewport, ...ahead }, 1) > 0;
  }

  /** Drawing and marks together: the drawing copied where its tile is there, else drawn. */
  private drawMarked(ink: Ink, box: Box, stepPx: number): boolean {
    const { context } = ink;
    const sheet = context.getTransform();
    const tile: Viewport = { x: sheet.e, y: sheet.f, stepPx, width: TILE_PX, height: TILE_PX };
    let isDrawn = true;
    if (this.resting.isComplete(tile)) {
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.fillStyle = ink.palette.paper;
      this.resting.copy(context, tile, { x: 0, y: 0, width: TILE_PX, height: TILE_PX });
      context.setTransform(sheet);
    } else isDrawn = this.content.drawResting(ink, box);
    return this.content.drawMarks(ink, box) || isDrawn;
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
    const moved = [...lift.moving].flatMap((id) =>
      this.content.extentOf(id).map((box) => moveBox(box, lift.dx, lift.dy)),
    );
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
    const box = sheetBox(rect, viewport);
    const ink = this.inkOn(context, stepPx);
    context.save();
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.beginPath();
    context.rect(rect.x, rect.y, rect.width, rect.height);
    context.clip();
    context.fillStyle = frame.palette.paper;
    if (this.canShowMarked(viewport, frame)) this.showTiles(this.marked, context, viewport, rect);
    else {
      this.showTiles(this.resting, context, viewport, rect);
      context.setTransform(stepPx, 0, 0, stepPx, x, y);
      this.content.drawMarks(ink, box);
    }
    if (frame.overlay.lift !== null) this.drawLift(ink, viewport, rect, frame.overlay.lift);
    context.setTransform(stepPx, 0, 0, stepPx, x, y);
    for (const piece of pieces.values()) if (piece.boxes.some((each) => boxesTouch(each, box))) piece.draw(ink);
    context.restore();
  }

  /** While zooming, tiles of the last scale do if they were all there. */
  private canShowMarked(viewport: Viewport, frame: Frame): boolean {
    if (this.marked.isComplete(viewport)) return true;
    const isZooming = this.last !== null && this.last.view.scale !== frame.view.scale;
    return isZooming && this.marked.wasComplete;
  }

  private showTiles(tiles: TiledDrawing, context: CanvasRenderingContext2D, viewport: Viewport, rect: PixelRect): void {
    if (!tiles.isComplete(viewport)) context.fillRect(rect.x, rect.y, rect.width, rect.height);
    tiles.copy(context, viewport, rect);
  }

  private drawLift(ink: Ink, viewport: Viewport, rect: PixelRect, lift: Lift): void {
    const { context } = ink;
    const { stepPx } = viewport;
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
      this.content.drawAllMoving(ink);
    }
    context.setTransform(stepPx, 0, 0, stepPx, viewport.x, viewport.y);
    drawStretched(ink, lift);
  }
}

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
  const isSamePlace = a.view.x === b.view.x && a.view.y === b.view.y && a.view.scale === b.view.scale;
  return isSamePlace && a.width === b.width && a.height === b.height && a.pixelRatio === b.pixelRatio;
}

function sheetBox(rect: PixelRect, { x, y, stepPx }: Viewport): Box {
  return {
    left: (rect.x - x) / stepPx,
    top: (rect.y - y) / stepPx,
    right: (rect.x + rect.width - x) / stepPx,
    bottom: (rect.y + rect.height - y) / stepPx,
  };
}
