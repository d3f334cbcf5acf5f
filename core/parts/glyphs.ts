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

/** Short rays around something that shines or works. */
export function rays(x: number, y: number, inner: number, outer: number): Stroke[] {
  return [22.5, 67.5, 112.5, 157.5, 202.5, 247.5, 292.5, 337.5].map((degrees) => {
    const cos = Math.cos((degrees * Math.PI) / 180);
    const sin = Math.sin((degrees * Math.PI) / 180);
    return line(
      [
        [x + inner * cos, y + inner * sin],
        [x + outer * cos, y + outer * sin],
      ],
      "normal",
    );
  });
}
