import { PART_FLAG } from "../marks.ts";
import { type Ink, isFarOff } from "./ink.ts";
import type { LiveMarks } from "./live-marks.ts";
import type { ScenePart } from "./scene.ts";

/** A glow where something is on, a badge where a snag names a part. */
export function drawLiveParts(ink: Ink, marks: LiveMarks, parts: readonly ScenePart[]): void {
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
  ink: Ink,
  parts: readonly ScenePart[],
  colour: string,
  trace: (x: number, y: number) => void,
): void {
  if (parts.length === 0) return;
  const { context, palette, stepPx } = ink;
  context.beginPath();
  for (const { picture } of parts) trace(picture.box.right, picture.box.top);
  context.fillStyle = colour;
  context.fill();
  if (isFarOff(ink)) return;
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
