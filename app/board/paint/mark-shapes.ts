import { type Mark, markStrokes } from "../../../core/parts/index.ts";
import type { Stroke } from "../../../core/geometry/index.ts";
import { STANDING } from "../marks.ts";
import type { Palette } from "../palette.ts";

/** How one standing of a terminal is drawn: the same strokes as on paper, in the colour of what it says. */
interface MarkLook {
  readonly colour: keyof Palette;
  readonly filled: readonly Stroke[];
  readonly drawn: readonly Stroke[];
}

const MARKS: readonly (readonly [standing: number, mark: Mark, colour: keyof Palette])[] = [
  [STANDING.dead, "dead", "faint"],
  [STANDING.ground, "ground", "ground"],
  [STANDING.switched, "switched", "rest"],
  [STANDING.atRest, "at-rest", "rest"],
  [STANDING.always, "always", "hot"],
];

const LOOKS = new Map(
  MARKS.flatMap(([standing, mark, colour]) =>
    [false, true].map((viaLoad) => [lookKey(standing, viaLoad), lookOf(mark, viaLoad, colour)] as const),
  ),
);

/** One number for a standing, reached directly or only through a load. */
export function lookKey(standing: number, viaLoad: boolean): number {
  return standing * 2 + Number(viaLoad);
}

/** The look of a mark; `undefined` where there is nothing to say. */
export function markLook(key: number): MarkLook | undefined {
  return LOOKS.get(key);
}

function lookOf(mark: Mark, viaLoad: boolean, colour: keyof Palette): MarkLook {
  const strokes = markStrokes(mark, viaLoad);
  const isFilled = (stroke: Stroke) => (stroke.shape === "line" || stroke.shape === "circle") && stroke.fill === true;
  return { colour, filled: strokes.filter(isFilled), drawn: strokes.filter((stroke) => !isFilled(stroke)) };
}

/** Adds a stroke to the path, `grown` times its size and moved to (x, y). */
export function traceAt(context: CanvasRenderingContext2D, stroke: Stroke, x: number, y: number, grown: number): void {
  if (stroke.shape === "line") {
    stroke.points.forEach(([px, py], i) => {
      if (i === 0) context.moveTo(x + px * grown, y + py * grown);
      else context.lineTo(x + px * grown, y + py * grown);
    });
    if (stroke.closed === true) context.closePath();
  } else if (stroke.shape === "circle") {
    const [cx, cy] = [x + stroke.centre[0] * grown, y + stroke.centre[1] * grown];
    context.moveTo(cx + stroke.radius * grown, cy);
    context.arc(cx, cy, stroke.radius * grown, 0, 2 * Math.PI);
  }
}

/** Ring around a mark that is hot at this moment. `r` is half the mark's size. */
export function traceHotRing(context: CanvasRenderingContext2D, x: number, y: number, r: number): void {
  context.moveTo(x + r * 1.9, y);
  context.arc(x, y, r * 1.9, 0, 2 * Math.PI);
}

/** Triangle around bare metal that a snag names. */
export function traceWarning(context: CanvasRenderingContext2D, x: number, y: number, r: number): void {
  const arm = r * 3.2;
  context.moveTo(x, y - arm);
  context.lineTo(x + arm * 0.95, y + arm * 0.65);
  context.lineTo(x - arm * 0.95, y + arm * 0.65);
  context.closePath();
}
