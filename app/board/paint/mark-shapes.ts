import { STANDING } from "../marks.ts";
import type { Palette } from "../palette.ts";

/** How one standing of a terminal looks: told apart by shape, then by colour. */
interface MarkShape {
  readonly isFilled: boolean;
  readonly colour: keyof Palette;
  readonly trace: (context: CanvasRenderingContext2D, x: number, y: number, r: number) => void;
}

type Trace = MarkShape["trace"];

const cross: Trace = (context, x, y, r) => {
  const arm = r * 0.55;
  context.moveTo(x - arm, y - arm);
  context.lineTo(x + arm, y + arm);
  context.moveTo(x + arm, y - arm);
  context.lineTo(x - arm, y + arm);
};

const circle: Trace = (context, x, y, r) => {
  context.moveTo(x + r, y);
  context.arc(x, y, r, 0, 2 * Math.PI);
};

const smallCircle: Trace = (context, x, y, r) => circle(context, x, y, r * 0.6);

const square: Trace = (context, x, y, r) => context.rect(x - r * 0.8, y - r * 0.8, r * 1.6, r * 1.6);

const diamond: Trace = (context, x, y, r) => {
  const arm = r * 1.35;
  context.moveTo(x, y - arm);
  context.lineTo(x + arm, y);
  context.lineTo(x, y + arm);
  context.lineTo(x - arm, y);
  context.closePath();
};

/** A circle with a bar across: hot only when something is operated. */
const barredCircle: Trace = (context, x, y, r) => {
  circle(context, x, y, r);
  context.moveTo(x, y - r);
  context.lineTo(x, y + r);
};

/** A circle with half a bar: as above, by way of a load. */
const halfBarredCircle: Trace = (context, x, y, r) => {
  circle(context, x, y, r);
  context.moveTo(x, y - r);
  context.lineTo(x, y);
};

const dottedCircle: Trace = (context, x, y, r) => {
  circle(context, x, y, r);
  circle(context, x, y, r * 0.2);
};

const dottedDiamond: Trace = (context, x, y, r) => {
  diamond(context, x, y, r);
  circle(context, x, y, r * 0.2);
};

/** By standing: reached directly, and only through a load (then the shape is hollow). */
const SHAPES: readonly { readonly direct: MarkShape; readonly viaLoad: MarkShape }[] = shapesByStanding();

function shapesByStanding() {
  const drawn = (colour: keyof Palette, trace: Trace): MarkShape => ({ isFilled: false, colour, trace });
  const filled = (colour: keyof Palette, trace: Trace): MarkShape => ({ isFilled: true, colour, trace });
  const both = (shape: MarkShape) => ({ direct: shape, viaLoad: shape });
  const shapes = [];
  shapes[STANDING.unknown] = both(drawn("faint", cross));
  shapes[STANDING.dead] = both(drawn("ink", smallCircle));
  shapes[STANDING.ground] = both(filled("ground", square));
  shapes[STANDING.switched] = { direct: drawn("rest", barredCircle), viaLoad: drawn("rest", halfBarredCircle) };
  shapes[STANDING.atRest] = { direct: filled("rest", circle), viaLoad: drawn("rest", dottedCircle) };
  shapes[STANDING.always] = { direct: filled("hot", diamond), viaLoad: drawn("hot", dottedDiamond) };
  return shapes;
}

export function markShape(standing: number, viaLoad: boolean): MarkShape {
  const shape = SHAPES[standing] ?? SHAPES[STANDING.unknown]!;
  return viaLoad ? shape.viaLoad : shape.direct;
}

/** Ring around a mark that is hot at this moment. */
export const traceHotRing: Trace = (context, x, y, r) => circle(context, x, y, r * 1.75);

/** Triangle around bare metal that a snag names. */
export const traceWarning: Trace = (context, x, y, r) => {
  const arm = r * 2.6;
  context.moveTo(x, y - arm);
  context.lineTo(x + arm * 0.9, y + arm * 0.6);
  context.lineTo(x - arm * 0.9, y + arm * 0.6);
  context.closePath();
};
