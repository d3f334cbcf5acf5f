import type { Box } from "../../../core/geometry/index.ts";
import type { PixelRect } from "./damage.ts";

/** Side of a tile in device pixels. */
export const TILE_PX = 512;
/** Tiles kept at most, over all scales: enough for two screens of a large display at pixel ratio 2. */
const MOST_TILES = 64;

/** With more damaged spots than this a tile is redrawn whole. */
const MOST_SPOTS = 12;

export interface TileCanvas {
  readonly image: CanvasImageSource;
  readonly context: CanvasRenderingContext2D;
}

/** Gives an empty canvas of `TILE_PX` a side; opaque ones are copied faster. */
export type MakeCanvas = (isOpaque: boolean) => TileCanvas;

/** The part of the sheet a canvas shows, in device pixels: a sheet point lies at `sheet * stepPx + (x, y)`, x and y whole. */
export interface Viewport {
  readonly x: number;
  readonly y: number;
  readonly stepPx: number;
  readonly width: number;
  readonly height: number;
}

/** Draws what lies in `box` (sheet coordinates) on a context set to sheet coordinates; `false`: there was nothing. */
export type DrawBox = (context: CanvasRenderingContext2D, box: Box, stepPx: number) => boolean;

interface Tile {
  readonly canvas: TileCanvas;
  /** Nothing is drawn on it but paper. */
  isBlank: boolean;
  lastUsed: number;
}

/**
 * A drawing kept as tiles of pixels, one set per scale. Tiles are drawn when first wanted, redrawn only where damaged, and
 * stand in, scaled, while tiles of a new scale are missing.
 */
export class TiledDrawing {
  private readonly sets = new Map<number, Map<number, Tile>>();
  private readonly spare: TileCanvas[] = [];
  private readonly makeCanvas: MakeCanvas;
  private readonly isOpaque: boolean;
  private readonly draw: DrawBox;
  private count = 0;
  private clock = 0;
  /** Nothing was missing when tiles were last filled in: at that scale and place there is something to show. */
  wasComplete = false;

  constructor(makeCanvas: MakeCanvas, isOpaque: boolean, draw: DrawBox) {
    this.makeCanvas = makeCanvas;
    this.isOpaque = isOpaque;
    this.draw = draw;
  }

  /** Forgets all pixels. */
  clear(): void {
    for (const set of this.sets.values()) for (const tile of set.values()) this.spare.push(tile.canvas);
    this.sets.clear();
    this.count = 0;
    this.wasComplete = false;
  }

  /** Redraws damaged spots at `stepPx`; tiles of other scales that show any of it are dropped. */
  damage(boxes: readonly Box[], stepPx: number): void {
    for (const [scale, set] of this.sets) {
      for (const [key, tile] of set) {
        const [column, row] = placeOf(key);
        const hit = boxes.map((box) => clipToTile(box, column, row, scale)).filter((box) => box !== null);
        if (hit.length === 0) continue;
        const whole = hit.length > MOST_SPOTS;
        if (scale === stepPx) this.redraw(tile, column, row, stepPx, whole ? [boxOfTile(column, row, stepPx)] : hit);
        else this.drop(set, key, tile);
      }
    }
  }

  /** Draws up to `most` missing tiles of a viewport, those nearest its middle first; how many are still missing. */
  fill(viewport: Viewport, most: number): number {
    const set = this.setAt(viewport.stepPx);
    const missing = tilesIn(viewport).filter((key) => !set.has(key));
    const middle = [
      (viewport.width / 2 - viewport.x) / TILE_PX - 0.5,
      (viewport.height / 2 - viewport.y) / TILE_PX - 0.5,
    ] as const;
    const distance = (key: number) => Math.hypot(placeOf(key)[0] - middle[0], placeOf(key)[1] - middle[1]);
    missing.sort((a, b) => distance(a) - distance(b));
    for (const key of missing.slice(0, most)) this.make(set, key, viewport.stepPx);
    if (this.count > MOST_TILES) this.forgetOldest(viewport);
    this.wasComplete = missing.length <= most;
    return Math.max(0, missing.length - most);
  }

  /** Whether every tile of the viewport is there at its own scale. */
  isComplete(viewport: Viewport): boolean {
    const set = this.sets.get(viewport.stepPx);
    return set !== undefined && tilesIn(viewport).every((key) => set.has(key));
  }

  /** Whether there is anything at all to show in place of missing tiles. */
  get isEmpty(): boolean {
    return this.count === 0;
  }

  /**
   * Copies the tiles that `within` shows onto a context in device pixels. Blank ones of an opaque drawing are filled with the
   * context's fill style, those of a transparent one left out.
   */
  copy(context: CanvasRenderingContext2D, viewport: Viewport, within: PixelRect): void {
    this.clock++;
    if (!this.isComplete(viewport)) {
      for (const scale of this.standIns(viewport.stepPx)) this.copySet(context, viewport, scale, within);
    }
    this.copySet(context, viewport, viewport.stepPx, within);
  }

  /** Scales whose tiles stand in for missing ones: the smallest, which shows most of the sheet, and over it the nearest. */
  private standIns(stepPx: number): Iterable<number> {
    const others = [...this.sets].filter(([scale, set]) => scale !== stepPx && set.size > 0).map(([scale]) => scale);
    const farOff = (scale: number) => Math.abs(Math.log(scale / stepPx));
    const nearest = others.toSorted((a, b) => farOff(a) - farOff(b)).slice(0, 1);
    return new Set([...(others.length > 0 ? [Math.min(...others)] : []), ...nearest]);
  }

  private copySet(context: CanvasRenderingContext2D, viewport: Viewport, scale: number, within: PixelRect): void {
    const set = this.sets.get(scale);
    if (set === undefined) return;
    const grown = viewport.stepPx / scale;
    const size = TILE_PX * grown;
    for (const [key, tile] of set) {
      const [column, row] = placeOf(key);
      const x = viewport.x + column * size;
      const y = viewport.y + row * size;
      if (x >= within.x + within.width || y >= within.y + within.height || x + size <= within.x || y + size <= within.y)
        continue;
      tile.lastUsed = this.clock;
      if (tile.isBlank) {
        if (this.isOpaque) context.fillRect(x, y, size, size);
      } else if (grown === 1) context.drawImage(tile.canvas.image, x, y);
      else context.drawImage(tile.canvas.image, x, y, size, size);
    }
  }

  private setAt(stepPx: number): Map<number, Tile> {
    let set = this.sets.get(stepPx);
    if (set === undefined) {
      set = new Map();
      this.sets.set(stepPx, set);
    }
    return set;
  }

  private make(set: Map<number, Tile>, key: number, stepPx: number): void {
    const canvas = this.spare.pop() ?? this.makeCanvas(this.isOpaque);
    const tile: Tile = { canvas, isBlank: true, lastUsed: this.clock };
    const [column, row] = placeOf(key);
    this.redraw(tile, column, row, stepPx, [boxOfTile(column, row, stepPx)]);
    set.set(key, tile);
    this.count++;
  }

  private redraw(tile: Tile, column: number, row: number, stepPx: number, boxes: readonly Box[]): void {
    const { context } = tile.canvas;
    let isMarked = false;
    for (const box of boxes) {
      const left = Math.floor(box.left * stepPx) - column * TILE_PX;
      const top = Math.floor(box.top * stepPx) - row * TILE_PX;
      const width = Math.ceil(box.right * stepPx) - column * TILE_PX - left;
      const height = Math.ceil(box.bottom * stepPx) - row * TILE_PX - top;
      context.save();
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.beginPath();
      context.rect(left, top, width, height);
      context.clip();
      if (!this.isOpaque) context.clearRect(left, top, width, height);
      context.setTransform(stepPx, 0, 0, stepPx, -column * TILE_PX, -row * TILE_PX);
      if (this.draw(context, box, stepPx)) isMarked = true;
      context.restore();
    }
    if (isMarked) tile.isBlank = false;
  }

  private drop(set: Map<number, Tile>, key: number, tile: Tile): void {
    set.delete(key);
    this.spare.push(tile.canvas);
    this.count--;
  }

  /** Makes room: tiles of other scales and those longest out of view go first. */
  private forgetOldest(viewport: Viewport): void {
    const wanted = new Set(tilesIn(viewport));
    const all = [...this.sets].flatMap(([scale, set]) =>
      [...set]
        .filter(([key]) => scale !== viewport.stepPx || !wanted.has(key))
        .map(([key, tile]) => ({ scale, set, key, tile })),
    );
    all.sort((a, b) => a.tile.lastUsed - b.tile.lastUsed);
    for (const { set, key, tile } of all.slice(0, this.count - MOST_TILES)) this.drop(set, key, tile);
    for (const [scale, set] of this.sets) if (set.size === 0 && scale !== viewport.stepPx) this.sets.delete(scale);
  }
}

const OFFSET = 32_768;

function keyOf(column: number, row: number): number {
  return (row + OFFSET) * 65_536 + column + OFFSET;
}

function placeOf(key: number): readonly [column: number, row: number] {
  return [(key % 65_536) - OFFSET, Math.floor(key / 65_536) - OFFSET];
}

/** Keys of all tiles a viewport shows any of. */
function tilesIn({ x, y, width, height }: Viewport): number[] {
  const keys: number[] = [];
  for (let row = Math.floor(-y / TILE_PX); row * TILE_PX + y < height; row++) {
    for (let column = Math.floor(-x / TILE_PX); column * TILE_PX + x < width; column++) keys.push(keyOf(column, row));
  }
  return keys;
}

function boxOfTile(column: number, row: number, stepPx: number): Box {
  const side = TILE_PX / stepPx;
  return { left: column * side, top: row * side, right: (column + 1) * side, bottom: (row + 1) * side };
}

function clipToTile(box: Box, column: number, row: number, stepPx: number): Box | null {
  const tile = boxOfTile(column, row, stepPx);
  const left = Math.max(box.left, tile.left);
  const top = Math.max(box.top, tile.top);
  const right = Math.min(box.right, tile.right);
  const bottom = Math.min(box.bottom, tile.bottom);
  return left < right && top < bottom ? { left, top, right, bottom } : null;
}
