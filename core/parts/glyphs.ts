import type { Stroke } from "../geometry/index.ts";
import { line, outline, solid } from "./drawing.ts";

/** Small figures that several symbols share. */

/** The vehicle's frame: a bar with slanted strokes hanging from it; the conductor arrives at (x, y) from above. */
export function frameMark(x: number, y: number, half: number): Stroke[] {
  const slant = (from: number) =>
    line([
      [x + from * half, y],
      [x + (from - 0.45) * half, y + 0.8 * half],
    ]);
  return [
    line([
      [x - half, y],
      [x + half, y],
    ]),
    slant(-0.5),
    slant(0.25),
    slant(1),
  ];
}

/** A fuse: a long box with the conductor through it; pulled, the conductor stops short on both sides. */
export function fuseBody(left: number, right: number, y: number, halfHeight: number, fitted: boolean): Stroke[] {
  const corner = [
    [left, y - halfHeight],
    [right, y - halfHeight],
    [right, y + halfHeight],
    [left, y + halfHeight],
  ] as const;
  if (!fitted) return [{ shape: "line", points: corner, closed: true, dash: true, weight: "thin" }];
  return [
    outline(corner),
    line([
      [left, y],
      [right, y],
    ]),
  ];
}

/** A contact blade from its pivot to where its tip stands. */
export function blade(pivotX: number, pivotY: number, tipX: number, tipY: number): Stroke[] {
  return [
    { shape: "circle", centre: [pivotX, pivotY], radius: 0.12, fill: true, weight: "thin" },
    line(
      [
        [pivotX, pivotY],
        [tipX, tipY],
      ],
      "thick",
    ),
  ];
}

/** A diode lying on the line y, conducting towards `tip`: `tip` is the side of its bar. */
export function diodeBody(tail: number, tip: number, y: number, halfHeight: number): Stroke[] {
  return [
    solid([
      [tail, y - halfHeight],
      [tip, y],
      [tail, y + halfHeight],
    ]),
    line(
      [
        [tip, y - halfHeight],
        [tip, y + halfHeight],
      ],
      "thick",
    ),
  ];
}

/** Short rays around a lamp of radius 0.9 that is lit, at these angles in degrees clockwise from the right. */
export function rays(x: number, y: number, angles: readonly number[]): Stroke[] {
  return angles.map((degrees) => line([polar(x, y, 1.1, degrees), polar(x, y, 1.5, degrees)]));
}

/** Two arrows chasing each other around something that turns. */
export function turning(x: number, y: number, radius: number): Stroke[] {
  return [205, 25].flatMap((start) => [
    { shape: "arc", centre: [x, y], radius, start, end: start + 105, weight: "normal" },
    ...arrowHead(...polar(x, y, radius, start + 125), start + 205, 0.4),
  ]);
}

/** A solid arrow head with its tip at (x, y), pointing along `degrees` clockwise from the right. */
export function arrowHead(x: number, y: number, degrees: number, length: number): Stroke[] {
  const barb = (angle: number) => polar(x, y, length, degrees + angle);
  return [solid([[x, y], barb(155), barb(205)])];
}

function polar(x: number, y: number, radius: number, degrees: number): readonly [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
}
