import type { Box, Point, Stroke } from "./stroke.ts";

/** The smallest box around all points, or `null` for no points. */
export function boxOfPoints(points: Iterable<Point>): Box | null {
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (const [x, y] of points) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  }
  return left > right ? null : { left, top, right, bottom };
}

/** The smallest box around both. */
export function unionBox(a: Box, b: Box): Box {
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  };
}

/** The box with every side moved outwards by `by` (inwards when negative). */
export function growBox(box: Box, by: number): Box {
  return { left: box.left - by, top: box.top - by, right: box.right + by, bottom: box.bottom + by };
}

export function moveBox(box: Box, dx: number, dy: number): Box {
  return { left: box.left + dx, top: box.top + dy, right: box.right + dx, bottom: box.bottom + dy };
}

/** Whether the two share area or an edge. */
export function boxesTouch(a: Box, b: Box): boolean {
  return a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;
}

/** Whether the two share area; a common edge alone does not count. */
export function boxesOverlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function boxHolds(box: Box, [x, y]: Point): boolean {
  return x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;
}

/** Whether all of `inner` lies in `outer`, edges included. */
export function boxHoldsBox(outer: Box, inner: Box): boolean {
  return (
    inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom
  );
}

/** Distance from a point to the nearest spot of a box, 0 inside it. Grid steps. */
export function distanceToBox(box: Box, [x, y]: Point): number {
  return Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
}

/**
 * Extent of lettering set at `centre`: how much room a text of this height may take. A letter is taken as 0.58 of its height
 * wide, which the drawing's typeface stays under on average; good enough to keep lettering apart, not to set it.
 */
export function textBox(centre: Point, text: string, size: number, anchor: "start" | "middle" | "end"): Box {
  const width = text.length * size * 0.58;
  const left = centre[0] - (anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width);
  return { left, top: centre[1] - size / 2, right: left + width, bottom: centre[1] + size / 2 };
}

/** Extent of one stroke, line weight not counted. Grid steps. */
export function boxOfStroke(stroke: Stroke): Box {
  switch (stroke.shape) {
    case "line":
      return boxOfPoints(stroke.points) ?? { left: 0, top: 0, right: 0, bottom: 0 };
    case "text":
      return textBox(stroke.centre, stroke.text, stroke.size, stroke.anchor ?? "middle");
    default: {
      const [x, y] = stroke.centre;
      return growBox({ left: x, top: y, right: x, bottom: y }, stroke.radius);
    }
  }
}
