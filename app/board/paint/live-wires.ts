import type { Point } from "../../../core/geometry/index.ts";
import { STANDING, WIRE_FLAG } from "../marks.ts";
import type { Palette } from "../palette.ts";
import { type Ink, isFarOff, traceRoute } from "./ink.ts";
import type { LiveMarks } from "./live-marks.ts";
import type { SceneWire } from "./scene.ts";
import { traceBeads, traceChevrons, traceTicks } from "./wire-patterns.ts";

/** Upper ends of the load classes in amps, and the line width of each in grid steps. */
const LOAD_A = [0, 2, 10, 40, Infinity];
const LOAD_WIDTH = [0.11, 0.14, 0.19, 0.26, 0.34];

const LEAST_PX = 1.6;
/** The double line of what is always hot: its least width in grid steps and CSS pixels, and the share of it left open. */
const DOUBLE = { width: 0.17, leastPx: 3, gap: 0.36 };

/** Standing of the metal a wire is part of: that of its terminals. */
export type StandingOfWire = (wire: SceneWire) => number;

interface WireClass {
  readonly wires: SceneWire[];
  readonly colour: keyof Palette;
  readonly width: number;
  readonly standing: number;
}

/** Wires as the analysis knows them: standing by line, load by width, current by arrow heads, trouble by pattern. */
export function drawLiveWires(
  ink: Ink,
  marks: LiveMarks,
  wires: readonly SceneWire[],
  standingOfWire: StandingOfWire,
): void {
  if (isFarOff(ink)) return drawFromAfar(ink, marks, wires, standingOfWire);
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
        colour: colourOf(standing, isHot),
        width: LOAD_WIDTH[load]!,
        standing,
      });
  }
  for (const kind of classes.values()) drawWireClass(ink, kind);
  drawPatterns(ink, marks, wires);
}

function colourOf(standing: number, isHot: boolean): keyof Palette {
  if (isHot) return "hot";
  if (standing >= STANDING.atRest) return "rest";
  return standing === STANDING.ground ? "ground" : "ink";
}

/** Too small for widths and patterns: hair lines in the colour of what is hot, thicker ones for trouble. */
function drawFromAfar(ink: Ink, marks: LiveMarks, wires: readonly SceneWire[], standingOfWire: StandingOfWire): void {
  const { palette, stepPx } = ink;
  const byColour: Record<"hot" | "rest" | "stop", SceneWire[]> = { rest: [], hot: [], stop: [] };
  for (const wire of wires) {
    const flags = marks.wireFlags(wire);
    if ((flags & (WIRE_FLAG.overload | WIRE_FLAG.unguarded | WIRE_FLAG.snag)) !== 0) byColour.stop.push(wire);
    else if ((flags & WIRE_FLAG.hotNow) !== 0) byColour.hot.push(wire);
    else if (standingOfWire(wire) >= STANDING.atRest) byColour.rest.push(wire);
  }
  strokeAll(ink, byColour.rest, palette.rest, 1 / stepPx);
  strokeAll(ink, byColour.hot, palette.hot, 1 / stepPx);
  strokeAll(ink, byColour.stop, palette.stop, 2.4 / stepPx);
}

/** Always hot: a double line. Hot at rest: a solid one. Switched: dashes. Else as drawn, as wide as the load asks. */
function drawWireClass(ink: Ink, { wires, colour, width, standing }: WireClass): void {
  const { context, palette, stepPx } = ink;
  context.beginPath();
  for (const wire of wires) traceRoute(context, wire.picture, true);
  const isDouble = standing === STANDING.always;
  const outerWidth = Math.max(width, isDouble ? DOUBLE.width : 0, (isDouble ? DOUBLE.leastPx : LEAST_PX) / stepPx);
  context.strokeStyle = palette[colour];
  context.lineWidth = outerWidth;
  if (standing === STANDING.switched) context.setLineDash([0.7, 0.35]);
  context.stroke();
  context.setLineDash([]);
  if (!isDouble) return;
  context.strokeStyle = palette.paper;
  context.lineWidth = outerWidth * DOUBLE.gap;
  context.stroke();
}

function drawPatterns(ink: Ink, marks: LiveMarks, wires: readonly SceneWire[]): void {
  const { context, palette } = ink;
  const flagged = (flag: number) => wires.filter((wire) => (marks.wireFlags(wire) & flag) !== 0);
  context.globalAlpha = 0.22;
  strokeAll(ink, flagged(WIRE_FLAG.snag), palette.stop, 0.8);
  context.globalAlpha = 1;
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
