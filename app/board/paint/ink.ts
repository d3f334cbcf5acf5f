import type { Box, Point, Stroke, Weight } from "../../../core/geometry/index.ts";
import type { Lettering, PartPicture, WirePicture } from "../../../core/picture/index.ts";
import type { Palette } from "../palette.ts";

/** What the painter draws with: a canvas context already set to sheet coordinates, and how big a grid step comes out. */
export interface Ink {
  readonly context: CanvasRenderingContext2D;
  /** CSS pixels per grid step: how large a step looks, whatever the display's pixel ratio. */
  readonly stepPx: number;
  readonly palette: Palette;
  /** Print captions and wires' particulars. */
  readonly lettering: boolean;
}

/** What of a wire is drawn in ink. */
export type WireInk = Pick<WirePicture, "route" | "hops" | "lettering">;

/** A bare line along a route. */
export function plainWire(route: readonly Point[]): WireInk {
  return { route, hops: [], lettering: [] };
}

/** Line widths in grid steps (0.18, 0.35 and 0.7 mm at 5 mm a step), and the thinnest they get in CSS pixels. */
const WIDTH: Readonly<Record<Weight, number>> = { thin: 0.036, normal: 0.07, thick: 0.14 };
const LEAST_PX: Readonly<Record<Weight, number>> = { thin: 0.7, normal: 1, thick: 1.6 };

/** Below these a drawing loses what could not be made out anyway. CSS pixels. */
const LEAST_LETTER_PX = 4;
const LEAST_GRID_STEP_PX = 9;
const LEAST_SYMBOL_STEP_PX = 1.6;
const LEAST_BOW_STEP_PX = 4;
const LEAST_SHAPE_STEP_PX = 5;
const LEAST_DASH_STEP_PX = 6;
/** Rounded ends and corners cost twice as much and only show on lines wider than a pixel or two. */
const LEAST_ROUND_STEP_PX = 8;
/** Radius of the bow by which one wire steps over another, and of the dot at a joint. Grid steps. */
const BOW = 0.3;
const DOT = 0.17;
/** Rasterising a path costs more than in step with its length: symbols go down in paths of so many strokes. */
const STROKES_A_PATH = 64;
const FAMILY = '"Inter", sans-serif';
const DEGREE = Math.PI / 180;

/** Line width in grid steps that comes out no thinner than can be seen. */
function widthOf(ink: Ink, weight: Weight): number {
  return Math.max(WIDTH[weight], LEAST_PX[weight] / ink.stepPx);
}

/** Draws wires and parts in ink: by line weight, so that the context's state changes seldom. */
export function drawInk(
  ink: Ink,
  parts: readonly PartPicture[],
  wires: readonly WireInk[],
  joints: readonly Point[],
): void {
  const { context, palette } = ink;
  roundLines(ink);
  context.strokeStyle = palette.ink;
  context.fillStyle = palette.ink;
  drawWires(ink, wires);
  if (joints.length > 0 && ink.stepPx >= LEAST_BOW_STEP_PX) drawDots(ink, joints);
  if (ink.stepPx < LEAST_SYMBOL_STEP_PX) drawSilhouettes(ink, parts);
  else drawSymbols(ink, parts);
  drawLettering(ink, parts, wires);
}

/** Whether shapes are too small to tell apart, so that marks and patterns become plain squares and lines. */
export function isFarOff({ stepPx }: Ink): boolean {
  return stepPx < LEAST_SHAPE_STEP_PX;
}

/** Rounds line ends and corners where that shows. */
export function roundLines({ context, stepPx }: Ink): void {
  const isRound = stepPx >= LEAST_ROUND_STEP_PX;
  context.lineCap = isRound ? "round" : "butt";
  context.lineJoin = isRound ? "round" : "miter";
}

function drawWires(ink: Ink, wires: readonly WireInk[]): void {
  const { context } = ink;
  context.lineWidth = widthOf(ink, "normal");
  context.beginPath();
  for (const wire of wires) traceRoute(context, wire, ink.stepPx >= LEAST_BOW_STEP_PX);
  context.stroke();
}

/** Adds a wire's line to the path, with a bow over each wire it steps over. */
export function traceRoute(
  context: CanvasRenderingContext2D,
  { route, hops }: Pick<WireInk, "route" | "hops">,
  withBows: boolean,
): void {
  route.forEach(([x, y], i) => {
    if (i === 0) return context.moveTo(x, y);
    const [fromX, fromY] = route[i - 1]!;
    if (withBows && hops.length > 0 && fromY === y) traceBows(context, fromX, x, y, hops);
    context.lineTo(x, y);
  });
}

function traceBows(
  context: CanvasRenderingContext2D,
  fromX: number,
  toX: number,
  y: number,
  hops: readonly Point[],
): void {
  const rightwards = toX > fromX;
  const [low, high] = rightwards ? [fromX, toX] : [toX, fromX];
  for (const [x, hopY] of hops) {
    if (hopY !== y || x - BOW < low || x + BOW > high) continue;
    context.lineTo(rightwards ? x - BOW : x + BOW, y);
    context.arc(x, y, BOW, rightwards ? Math.PI : 0, rightwards ? 0 : Math.PI, !rightwards);
  }
}

function drawDots({ context }: Ink, joints: readonly Point[]): void {
  context.beginPath();
  for (const [x, y] of joints) {
    context.moveTo(x + DOT, y);
    context.arc(x, y, DOT, 0, 2 * Math.PI);
  }
  context.fill();
}

/** A few pixels wide, a symbol is its outline. */
function drawSilhouettes({ context }: Ink, parts: readonly PartPicture[]): void {
  context.globalAlpha = 0.55;
  context.beginPath();
  for (const { box } of parts) context.rect(box.left, box.top, box.right - box.left, box.bottom - box.top);
  context.fill();
  context.globalAlpha = 1;
}

/** Strokes of symbols by how they are drawn; each class has one line width and one way to put it on. */
interface StrokeClass {
  readonly weight: Weight;
  readonly holds: (stroke: Stroke) => boolean;
  readonly isFilled?: boolean;
  readonly isDashed?: boolean;
}

const isLine = (weight: Weight) => (stroke: Stroke) =>
  stroke.shape !== "text" && !isFilled(stroke) && !isDashed(stroke) && (stroke.weight ?? "normal") === weight;

const STROKE_CLASSES: readonly StrokeClass[] = [
  { weight: "thin", holds: isLine("thin") },
  { weight: "normal", holds: isLine("normal") },
  { weight: "thick", holds: isLine("thick") },
  { weight: "thin", holds: isFilled, isFilled: true },
  { weight: "thin", holds: isDashed, isDashed: true },
];

function drawSymbols(ink: Ink, parts: readonly PartPicture[]): void {
  const { context } = ink;
  for (const { weight, holds, isFilled: fills = false, isDashed: dashes = false } of STROKE_CLASSES) {
    context.lineWidth = widthOf(ink, weight);
    if (dashes && ink.stepPx >= LEAST_DASH_STEP_PX) context.setLineDash([0.3, 0.2]);
    let inPath = 0;
    for (const part of parts) {
      for (const stroke of part.strokes) {
        if (!holds(stroke)) continue;
        if (inPath === 0) context.beginPath();
        trace(context, stroke);
        if (++inPath < STROKES_A_PATH) continue;
        putDown(context, fills);
        inPath = 0;
      }
    }
    if (inPath > 0) putDown(context, fills);
    if (dashes) context.setLineDash([]);
  }
}

function putDown(context: CanvasRenderingContext2D, fills: boolean): void {
  if (fills) context.fill();
  else context.stroke();
}

function isFilled(stroke: Stroke): boolean {
  return (stroke.shape === "line" || stroke.shape === "circle") && stroke.fill === true;
}

function isDashed(stroke: Stroke): boolean {
  return stroke.shape === "line" && stroke.dash === true && stroke.fill !== true;
}

/** Adds a stroke to the path. Text has no line to add. */
function trace(context: CanvasRenderingContext2D, stroke: Stroke): void {
  switch (stroke.shape) {
    case "line":
      stroke.points.forEach(([x, y], i) => (i === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
      if (stroke.closed === true) context.closePath();
      return;
    case "circle": {
      const [x, y] = stroke.centre;
      context.moveTo(x + stroke.radius, y);
      context.arc(x, y, stroke.radius, 0, 2 * Math.PI);
      return;
    }
    case "arc": {
      const [x, y] = stroke.centre;
      const start = stroke.start * DEGREE;
      context.moveTo(x + stroke.radius * Math.cos(start), y + stroke.radius * Math.sin(start));
      context.arc(x, y, stroke.radius, start, stroke.end * DEGREE);
      return;
    }
    case "text":
      return;
  }
}

interface Letters {
  readonly at: Point;
  readonly text: string;
  readonly anchor: Lettering["anchor"];
  readonly size: number;
  readonly upright: boolean;
}

function drawLettering(ink: Ink, parts: readonly PartPicture[], wires: readonly WireInk[]): void {
  const { context, palette, stepPx } = ink;
  const isLegible = (size: number) => size * stepPx >= LEAST_LETTER_PX;
  context.textBaseline = "middle";
  const inSymbols: Letters[] = [];
  const names: Letters[] = [];
  const rest: Letters[] = [];
  const isWanted = ({ role, size }: Lettering) =>
    isLegible(size) && (ink.lettering || role === "terminal" || role === "note");
  for (const part of parts) {
    for (const stroke of part.strokes) {
      if (stroke.shape === "text" && isLegible(stroke.size)) {
        inSymbols.push({
          at: stroke.centre,
          text: stroke.text,
          anchor: stroke.anchor ?? "middle",
          size: stroke.size,
          upright: false,
        });
      }
    }
    for (const lettering of part.lettering) {
      if (lettering.role === "name" && isLegible(lettering.size)) names.push(lettering);
      else if (isWanted(lettering)) rest.push(lettering);
    }
  }
  for (const wire of wires) rest.push(...wire.lettering.filter(isWanted));
  drawLetters(ink, inSymbols, "400");
  drawLetters(ink, names, "600");
  context.fillStyle = palette.faint;
  drawLetters(ink, rest, "400");
}

/**
 * Sets lettering by size, so that the font changes seldom. Canvas rounds font sizes under a transform, so letters are set in
 * device pixels.
 */
function drawLetters({ context }: Ink, letters: readonly Letters[], fontWeight: string): void {
  if (letters.length === 0) return;
  const sheet = context.getTransform();
  let font = "";
  for (const { at, text, anchor, size, upright } of letters) {
    const wanted = `${fontWeight} ${size * sheet.a}px ${FAMILY}`;
    if (wanted !== font) {
      font = wanted;
      context.font = font;
    }
    context.textAlign = anchor === "middle" ? "center" : anchor === "start" ? "left" : "right";
    const x = sheet.a * at[0] + sheet.e;
    const y = sheet.d * at[1] + sheet.f;
    if (upright) context.setTransform(0, -1, 1, 0, x, y);
    else context.setTransform(1, 0, 0, 1, x, y);
    context.fillText(text, 0, 0);
  }
  context.setTransform(sheet);
}

/** Dots of the grid, every second step, as far as they don't turn into a grey haze; `false`: none. */
export function drawGrid({ context, palette, stepPx }: Ink, box: Box): boolean {
  if (stepPx < LEAST_GRID_STEP_PX) return false;
  const size = 1.5 / stepPx;
  context.fillStyle = palette.grid;
  context.beginPath();
  for (let y = 2 * Math.ceil(box.top / 2); y <= box.bottom; y += 2) {
    for (let x = 2 * Math.ceil(box.left / 2); x <= box.right; x += 2)
      context.rect(x - size / 2, y - size / 2, size, size);
  }
  context.fill();
  return true;
}
