import type { Point, Stroke } from "../../../core/geometry/index.ts";
import { STANDING, TERMINAL_FLAG } from "../marks.ts";
import { type Ink, isFarOff } from "./ink.ts";
import { type LiveMarks, standingOf } from "./live-marks.ts";
import { lookKey, markLook, traceAt, traceHotRing, traceWarning } from "./mark-shapes.ts";
import type { ScenePart } from "./scene.ts";

/** Half the size of a terminal's mark: as on paper, in grid steps, but kept within these CSS pixels. */
const MARK = { half: 0.2, leastPx: 2.6, mostPx: 8 };

/** The mark of each terminal: its standing by shape, a ring while hot, a triangle round bare metal that a snag names. */
export function drawLiveTerminals(ink: Ink, marks: LiveMarks, parts: readonly ScenePart[]): void {
  const byLook: Point[][] = [];
  const hot: Point[] = [];
  const bare: Point[] = [];
  for (const part of parts) {
    const { terminals } = part.picture;
    for (let i = 0; i < terminals.length; i++) {
      const mark = marks.terminal(part, i);
      const { at } = terminals[i]!;
      const look = lookKey(standingOf(mark), (mark & TERMINAL_FLAG.viaLoad) !== 0);
      (byLook[look] ??= []).push(at);
      if ((mark & TERMINAL_FLAG.hotNow) !== 0) hot.push(at);
      if ((mark & TERMINAL_FLAG.bareSnag) !== 0) bare.push(at);
    }
  }
  if (isFarOff(ink)) drawSquares(ink, byLook, bare);
  else drawShapes(ink, byLook, hot, bare);
}

function drawShapes(
  ink: Ink,
  byLook: readonly (readonly Point[] | undefined)[],
  hot: readonly Point[],
  bare: readonly Point[],
): void {
  const { context, palette, stepPx } = ink;
  const grown = markHalf(stepPx) / MARK.half;
  const lineWidth = Math.max(0.07, 1.1 / stepPx);
  byLook.forEach((places, key) => {
    const look = markLook(key);
    if (places === undefined || look === undefined) return;
    context.fillStyle = palette[look.colour];
    context.strokeStyle = palette[look.colour];
    context.lineWidth = lineWidth;
    const traceAll = (strokes: readonly Stroke[]) => {
      context.beginPath();
      for (const [x, y] of places) for (const stroke of strokes) traceAt(context, stroke, x, y, grown);
    };
    if (look.filled.length > 0) {
      traceAll(look.filled);
      context.fill();
    }
    if (look.drawn.length > 0) {
      traceAll(look.drawn);
      context.stroke();
    }
  });
  strokeMarks(ink, hot, palette.hot, lineWidth, traceHotRing);
  strokeMarks(ink, bare, palette.stop, lineWidth * 1.8, traceWarning);
}

function strokeMarks(
  { context, stepPx }: Ink,
  places: readonly Point[],
  colour: string,
  width: number,
  trace: (context: CanvasRenderingContext2D, x: number, y: number, r: number) => void,
): void {
  if (places.length === 0) return;
  context.beginPath();
  for (const [x, y] of places) trace(context, x, y, markHalf(stepPx));
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.stroke();
}

/** Too small for shapes: a square each for what is hot at rest. */
function drawSquares(ink: Ink, byLook: readonly (readonly Point[] | undefined)[], bare: readonly Point[]): void {
  const { context, palette, stepPx } = ink;
  const half = 1.25 / stepPx;
  byLook.forEach((places, key) => {
    if (places === undefined || key < lookKey(STANDING.atRest, false)) return;
    const look = markLook(key);
    if (look !== undefined) fillSquares(context, places, half, palette[look.colour]);
  });
  fillSquares(context, bare, 2 * half, palette.stop);
}

function fillSquares(context: CanvasRenderingContext2D, places: readonly Point[], half: number, colour: string): void {
  if (places.length === 0) return;
  context.beginPath();
  for (const [x, y] of places) context.rect(x - half, y - half, 2 * half, 2 * half);
  context.fillStyle = colour;
  context.fill();
}

function markHalf(stepPx: number): number {
  return Math.min(Math.max(MARK.half, MARK.leastPx / stepPx), MARK.mostPx / stepPx);
}
