import type { Box, Point, Stroke } from "../geometry/index.ts";

/** Smallest box around strokes and points, grid steps; text is taken as 0.6 of its height wide per letter. Empty: one point at the origin. */
export function extentOf(strokes: readonly Stroke[], points: readonly Point[] = []): Box {
  const all = [...points, ...strokes.flatMap(reach)];
  if (all.length === 0) return { left: 0, top: 0, right: 0, bottom: 0 };
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const [x, y] of all) {
    box.left = Math.min(box.left, x);
    box.top = Math.min(box.top, y);
    box.right = Math.max(box.right, x);
    box.bottom = Math.max(box.bottom, y);
  }
  return box;
}

function reach(stroke: Stroke): readonly Point[] {
  switch (stroke.shape) {
    case "line":
      return stroke.points;
    case "circle":
      return around(stroke.centre, stroke.radius, stroke.radius);
    case "arc":
      return arcReach(stroke.centre, stroke.radius, stroke.start, stroke.end);
    case "text": {
      const wide = stroke.text.length * stroke.size * 0.6;
      const middle = { start: wide / 2, middle: 0, end: -wide / 2 }[stroke.anchor ?? "middle"];
      return around([stroke.centre[0] + middle, stroke.centre[1]], wide / 2, stroke.size / 2);
    }
  }
}

function around([x, y]: Point, halfWidth: number, halfHeight: number): readonly Point[] {
  return [
    [x - halfWidth, y - halfHeight],
    [x + halfWidth, y + halfHeight],
  ];
}

/** The ends of the arc and every quarter point it passes. */
function arcReach([x, y]: Point, radius: number, start: number, end: number): readonly Point[] {
  const sweep = (((end - start) % 360) + 360) % 360;
  const quarters = [0, 90, 180, 270].filter((angle) => (((angle - start) % 360) + 360) % 360 <= sweep);
  return [start, start + sweep, ...quarters].map((degrees) => {
    const angle = (degrees * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)] as const;
  });
}
