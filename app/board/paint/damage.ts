import { type Box, boxesOverlap, unionBox } from "../../../core/geometry/index.ts";

/** A rectangle of whole device pixels. */
export interface PixelRect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** More spots than this, or more than this share of the canvas, and the whole of it is painted. */
const MOST_RECTS = 24;
const MOST_SHARE = 0.6;

/**
 * The damaged spots as rectangles to repaint, overlapping ones joined, cut to the canvas; `null` when painting all of it is
 * less work.
 */
export function damageRects(
  boxes: readonly Box[],
  viewport: {
    readonly x: number;
    readonly y: number;
    readonly stepPx: number;
    readonly width: number;
    readonly height: number;
  },
): readonly PixelRect[] | null {
  const onCanvas = boxes
    .map((box) => ({
      left: Math.max(0, Math.floor(box.left * viewport.stepPx + viewport.x) - 1),
      top: Math.max(0, Math.floor(box.top * viewport.stepPx + viewport.y) - 1),
      right: Math.min(viewport.width, Math.ceil(box.right * viewport.stepPx + viewport.x) + 1),
      bottom: Math.min(viewport.height, Math.ceil(box.bottom * viewport.stepPx + viewport.y) + 1),
    }))
    .filter((box) => box.left < box.right && box.top < box.bottom);
  if (onCanvas.length > 8 * MOST_RECTS) return null;
  const joined = joinOverlapping(onCanvas);
  const area = joined.reduce((sum, box) => sum + areaOf(box), 0);
  if (joined.length > MOST_RECTS || area > MOST_SHARE * viewport.width * viewport.height) return null;
  return joined.map(({ left, top, right, bottom }) => ({ x: left, y: top, width: right - left, height: bottom - top }));
}

/** Joins boxes while that wastes little: two that overlap become one unless their hull is much larger than both. */
function joinOverlapping(boxes: readonly Box[]): Box[] {
  const joined: Box[] = [];
  for (const box of boxes) {
    let hull = box;
    for (let i = joined.length - 1; i >= 0; i--) {
      const other = joined[i]!;
      const both = unionBox(hull, other);
      if (!boxesOverlap(hull, other) || areaOf(both) > 1.25 * (areaOf(hull) + areaOf(other))) continue;
      hull = both;
      joined.splice(i, 1);
      i = joined.length;
    }
    joined.push(hull);
  }
  return joined;
}

function areaOf(box: Box): number {
  return (box.right - box.left) * (box.bottom - box.top);
}
