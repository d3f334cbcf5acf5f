import type { Point, Stroke } from "../../../core/geometry/index.ts";
import { PART_FLAG, STANDING, TERMINAL_FLAG, WIRE_FLAG } from "../marks.ts";
import type { Palette } from "../palette.ts";
import { type Ink, traceRoute } from "./ink.ts";
import { type LiveMarks, standingOf } from "./live-marks.ts";
import { lookKey, markLook, traceAt, traceHotRing, traceWarning } from "./mark-shapes.ts";
import type { ScenePart, SceneWire } from "./scene.ts";
import { traceBeads, traceChevrons, traceTicks } from "./wire-patterns.ts";

/** Below this many device pixels a step marks are plain squares and lines. */
const LEAST_SHAPE_STEP_PX = 5;
/** Half the size of a terminal's mark: as on paper, in grid steps, but kept within these device pixels. */
const MARK = { half: 0.2, leastPx: 2.6, mostPx: 8 };
/** Upper ends of the load classes in amps, and the line width of each in grid steps. */
const LOAD_A = [0, 2, 10, 40, Infinity];
const LOAD_WIDTH = [0.11, 0.14, 0.19, 0.26, 0.34];

/** Draws what the analysis says on top of the drawing: one path per kind of mark however many there are. */
export function drawLive(
  ink: Ink,
  marks: LiveMarks,
  parts: readonly ScenePart[],
  wires: readonly SceneWire[],
  standings: StandingOfWire,
): void {
  if (marks.isNone) return;
  const { context } = ink;
  context.lineCap = "round";
  context.lineJoin = "round";
  drawWires(ink, marks, wires, standings);
  drawParts(ink, marks, parts);
  drawTerminals(ink, marks, parts);
}

/** Standing of the metal a wire is part of: that of its terminals. */
export type StandingOfWire = (wire: SceneWire) => number;

interface WireClass {
  readonly wires: SceneWire[];
  readonly colour: keyof Palette;
  readonly width: number;
  readonly standing: number;
}

function drawWires(ink: Ink, marks: LiveMarks, wires: readonly SceneWire[], standingOfWire: StandingOfWire): void {
  const classes = new Map<number, WireClass>();
  for (const wire of wires) {
    const amps = Math.abs(marks.wireA(wire));
    const isHot = (marks.wireFlags(wire) & WIRE_FLAG.hotNow) !== 0;
    const standing = standingOfWire(wire);
    if (!isHot && amps === 0 && standing < STANDING.switched) continue;
    const load = LOAD_A.findIndex((most) => amps <= most);
    const key = (standing * 8 + load) * 2 + Number(isHot);
    const kind = classes.get(key);
    if (kind !== undefined) kind.wires.push(wire);
    else
      classes.set(key, {
        wires: [wire],
        colour: isHot ? "hot" : standing >= STANDING.atRest ? "rest" : standing === STANDING.ground ? "ground" : "ink",
        width: LOAD_WIDTH[load]!,
        standing,
      });
  }
  for (const kind of classes.values()) drawWireClass(ink, kind);
  drawPatterns(ink, marks, wires);
}

/** Always hot: a double line. Hot at rest: a solid one. Switched: dashes. Else as drawn, as wide as the load asks. */
function drawWireClass(ink: Ink, { wires, colour, width, standing }: WireClass): void {
  const { context, palette, stepPx } = ink;
  const isShaped = stepPx >= LEAST_SHAPE_STEP_PX;
  context.beginPath();
  for (const wire of wires) traceRoute(context, wire.picture, isShaped);
  context.strokeStyle = palette[colour];
  context.lineWidth = Math.max(width, 1.6 / stepPx);
  if (isShaped && standing === STANDING.switched) context.setLineDash([0.7, 0.35]);
  context.stroke();
  context.setLineDash([]);
  if (!isShaped || standing !== STANDING.always) return;
  context.strokeStyle = palette.paper;
  context.lineWidth = Math.max(width * 0.3, 0.8 / stepPx);
  context.stroke();
}

function drawPatterns(ink: Ink, marks: LiveMarks, wires: readonly SceneWire[]): void {
  const { context, palette, stepPx } = ink;
  const flagged = (flag: number) => wires.filter((wire) => (marks.wireFlags(wire) & flag) !== 0);
  const snags = flagged(WIRE_FLAG.snag);
  if (snags.length > 0) {
    context.globalAlpha = 0.22;
    strokeAll(ink, snags, palette.stop, 0.8);
    context.globalAlpha = 1;
  }
  if (stepPx < LEAST_SHAPE_STEP_PX) {
    strokeAll(ink, flagged(WIRE_FLAG.overload | WIRE_FLAG.unguarded), palette.stop, 2.4 / stepPx);
    return;
  }
  drawAlong(ink, flagged(WIRE_FLAG.overload), palette.stop, traceTicks);
  drawAlong(ink, flagged(WIRE_FLAG.unguarded), palette.stop, traceBeads);
  drawFlow(ink, marks, wires);
}

/** Arrow heads where current flows, edged with paper so that they show on the widest line. */
function drawFlow({ context, palette, stepPx }: Ink, marks: LiveMarks, wires: readonly SceneWire[]): void {
  const flowing = wires.filter((wire) => marks.wireA(wire) !== 0);
  if (flowing.length === 0) return;
  context.beginPath();
  for (const wire of flowing) traceChevrons(context, wire.picture.route, marks.wireA(wire) < 0);
  for (const [colour, width] of [
    [palette.paper, 0.26],
    [palette.ink, 0.1],
  ] as const) {
    context.strokeStyle = colour;
    context.lineWidth = Math.max(width, (width * 14) / stepPx);
    context.stroke();
  }
}

function strokeAll({ context }: Ink, wires: readonly SceneWire[], colour: string, width: number): void {
  if (wires.length === 0) return;
  context.beginPath();
  for (const wire of wires) traceRoute(context, wire.picture, false);
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.stroke();
}

function drawAlong(
  { context, stepPx }: Ink,
  wires: readonly SceneWire[],
  colour: string,
  trace: (context: CanvasRenderingContext2D, route: readonly Point[]) => void,
): void {
  if (wires.length === 0) return;
  context.beginPath();
  for (const wire of wires) trace(context, wire.picture.route);
  context.strokeStyle = colour;
  context.lineWidth = Math.max(0.08, 1.2 / stepPx);
  context.stroke();
}

function drawParts(ink: Ink, marks: LiveMarks, parts: readonly ScenePart[]): void {
  const { context, palette, stepPx } = ink;
  const flagged = (flag: number) => parts.filter((part) => (marks.part(part) & flag) !== 0);
  const on = flagged(PART_FLAG.on);
  if (on.length > 0) {
    context.beginPath();
    for (const { picture } of on) {
      const { left, top, right, bottom } = picture.box;
      context.roundRect(left, top, right - left, bottom - top, 0.5);
    }
    context.globalAlpha = 0.3;
    context.fillStyle = palette.on;
    context.fill();
    context.globalAlpha = 1;
  }
  const badge = Math.max(0.42, 4 / stepPx);
  drawBadges(ink, flagged(PART_FLAG.stop), palette.stop, (x, y) => polygon(context, x, y, badge, 8, Math.PI / 8));
  const onlyFix = flagged(PART_FLAG.fix).filter((part) => (marks.part(part) & PART_FLAG.stop) === 0);
  drawBadges(ink, onlyFix, palette.fix, (x, y) => polygon(context, x, y, badge, 3, -Math.PI / 2));
}

/** At a part's upper right corner: an eight-sided badge for `stop`, a three-sided one for `fix`, each with a stroke in it. */
function drawBadges(
  { context, palette, stepPx }: Ink,
  parts: readonly ScenePart[],
  colour: string,
  trace: (x: number, y: number) => void,
): void {
  if (parts.length === 0) return;
  context.beginPath();
  for (const { picture } of parts) trace(picture.box.right, picture.box.top);
  context.fillStyle = colour;
  context.fill();
  if (stepPx < LEAST_SHAPE_STEP_PX) return;
  const size = Math.max(0.2, 2 / stepPx);
  context.beginPath();
  for (const { picture } of parts) {
    const { right: x, top: y } = picture.box;
    context.moveTo(x, y - size);
    context.lineTo(x, y + size * 0.2);
    context.moveTo(x, y + size * 0.8);
    context.lineTo(x, y + size * 0.85);
  }
  context.strokeStyle = palette.paper;
  context.lineWidth = size * 0.45;
  context.stroke();
}

function polygon(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  radius: number,
  sides: number,
  start: number,
): void {
  for (let i = 0; i < sides; i++) {
    const angle = start + (i * 2 * Math.PI) / sides;
    const [px, py] = [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    if (i === 0) context.moveTo(px, py);
    else context.lineTo(px, py);
  }
  context.closePath();
}

function drawTerminals(ink: Ink, marks: LiveMarks, parts: readonly ScenePart[]): void {
  const { stepPx } = ink;
  const byLook: Point[][] = [];
  const hot: Point[] = [];
  const bare: Point[] = [];
  const isShaped = stepPx >= LEAST_SHAPE_STEP_PX;
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
  if (isShaped) drawShapes(ink, byLook, hot, bare);
  else drawSquares(ink, byLook, bare);
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

/** Too small for shapes: a square each, none for what is dead or unknown. */
function drawSquares(ink: Ink, byLook: readonly (readonly Point[] | undefined)[], bare: readonly Point[]): void {
  const { context, palette, stepPx } = ink;
  const half = 1.25 / stepPx;
  byLook.forEach((places, key) => {
    if (places === undefined || key < lookKey(STANDING.ground, false)) return;
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
