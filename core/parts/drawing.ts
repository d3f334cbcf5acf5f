import type { Box, Point, Stroke, Weight } from "../geometry/index.ts";

/** The strokes symbols are put together from, in grid steps. */
export function line(points: readonly Point[], weight: Weight = "normal"): Stroke {
  return { shape: "line", points, weight };
}

export function outline(points: readonly Point[], weight: Weight = "normal"): Stroke {
  return { shape: "line", points, closed: true, weight };
}

export function solid(points: readonly Point[]): Stroke {
  return { shape: "line", points, closed: true, fill: true, weight: "thin" };
}

export function dashed(points: readonly Point[], closed = false): Stroke {
  return { shape: "line", points, closed, dash: true, weight: "thin" };
}

export function ring(x: number, y: number, radius: number, weight: Weight = "normal"): Stroke {
  return { shape: "circle", centre: [x, y], radius, weight };
}

export function dot(x: number, y: number, radius: number): Stroke {
  return { shape: "circle", centre: [x, y], radius, fill: true, weight: "thin" };
}

export function letters(x: number, y: number, text: string, size = 0.6, anchor?: "start" | "middle" | "end"): Stroke {
  return anchor === undefined
    ? { shape: "text", centre: [x, y], text, size }
    : { shape: "text", centre: [x, y], text, size, anchor };
}

export function corners(left: number, top: number, right: number, bottom: number): Point[] {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

export function box(left: number, top: number, right: number, bottom: number): Box {
  return { left, top, right, bottom };
}

/** Leads of a symbol on one line: from the terminal at `from` to its body, and on from the body to the terminal at `to`. */
export function leads(from: number, bodyLeft: number, bodyRight: number, to: number, y = 0): Stroke[] {
  return [
    line([
      [from, y],
      [bodyLeft, y],
    ]),
    line([
      [bodyRight, y],
      [to, y],
    ]),
  ];
}
