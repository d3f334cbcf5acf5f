import type { Ink } from "./ink.ts";

/** A meter's lead: a slim tip on the metal, its handle up and to the right. The red one is filled, the black one hollow. */
export function traceProbe({ context, palette, stepPx }: Ink, x: number, y: number, isRed: boolean): void {
  const px = 1 / stepPx;
  const away = isRed ? 1 : -1;
  context.beginPath();
  context.moveTo(x, y);
  context.lineTo(x + away * 9 * px, y - 9 * px);
  context.strokeStyle = palette.ink;
  context.lineWidth = 2 * px;
  context.stroke();
  context.beginPath();
  context.moveTo(x + away * 9 * px, y - 9 * px);
  context.lineTo(x + away * 24 * px, y - 24 * px);
  context.lineCap = "round";
  context.strokeStyle = isRed ? palette.stop : palette.ink;
  context.lineWidth = 8 * px;
  context.stroke();
  if (isRed) return;
  context.strokeStyle = palette.paper;
  context.lineWidth = 4 * px;
  context.stroke();
}

/** The touch test's finger: three rings that close in on the spot. */
export function traceFinger({ context, palette, stepPx }: Ink, x: number, y: number): void {
  const px = 1 / stepPx;
  context.strokeStyle = palette.preview;
  for (const [radius, width] of [
    [6, 2.5],
    [12, 1.6],
    [18, 1],
  ] as const) {
    context.beginPath();
    context.arc(x, y, radius * px, 0, 2 * Math.PI);
    context.lineWidth = width * px;
    context.stroke();
  }
}
