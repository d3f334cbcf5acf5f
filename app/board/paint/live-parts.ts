import type { Point } from "../../../core/geometry/index.ts";
import { PART_FLAG } from "../marks.ts";
import { type Ink, isFarOff } from "./ink.ts";
import type { LiveMarks } from "./live-marks.ts";
import type { ScenePart } from "./scene.ts";

/** A glow where something is on, a badge where a snag names a part. */
export function drawLiveParts(ink: Ink, marks: LiveMarks, parts: readonly ScenePart[]): void {
  const { context, palette } = ink;
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
  drawBadges(ink, flagged(PART_FLAG.stop), STOP);
  drawBadges(
    ink,
    flagged(PART_FLAG.fix).filter((part) => (marks.part(part) & PART_FLAG.stop) === 0),
    FIX,
  );
}

/** The outline of a level's badge and the sign in it, about (0, 0) and one unit in size: as in the list of snags. */
interface Badge {
  readonly colour: "stop" | "fix";
  readonly sides: number;
  readonly start: number;
  readonly sign: readonly (readonly [from: Point, to: Point])[];
}

const STOP: Badge = {
  colour: "stop",
  sides: 8,
  start: Math.PI / 8,
  sign: [
    [
      [-0.42, 0],
      [0.42, 0],
    ],
  ],
};
const FIX: Badge = {
  colour: "fix",
  sides: 3,
  start: -Math.PI / 2,
  sign: [
    [
      [0, -0.45],
      [0, 0.08],
    ],
    [
      [0, 0.34],
      [0, 0.36],
    ],
  ],
};

/** Puts a badge at the upper right corner of each part. */
function drawBadges(ink: Ink, parts: readonly ScenePart[], { colour, sides, start, sign }: Badge): void {
  if (parts.length === 0) return;
  const { context, palette, stepPx } = ink;
  const size = Math.max(0.45, 4 / stepPx);
  context.beginPath();
  for (const { picture } of parts) polygon(context, picture.box.right, picture.box.top, size, sides, start);
  context.fillStyle = palette[colour];
  context.fill();
  if (isFarOff(ink)) return;
  context.beginPath();
  for (const { picture } of parts) {
    const { right, top } = picture.box;
    for (const [from, to] of sign) {
      context.moveTo(right + from[0] * size, top + from[1] * size);
      context.lineTo(right + to[0] * size, top + to[1] * size);
    }
  }
  context.strokeStyle = palette.paper;
  context.lineWidth = size * 0.22;
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
