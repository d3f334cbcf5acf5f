import { boxOfPoints, boxOfStroke, growBox, unionBox, type Box } from "../../core/geometry/index.ts";
import type { BenchSymbol } from "./symbol.ts";

/** What the drawing area shows with nothing drawn yet, grid steps. */
const USUAL: Box = { left: -4, top: -5, right: 10, bottom: 5 };
const ROOM = 3;

/** The part of the grid that is shown: the usual one, larger where the symbol needs it. */
export function extentOf({ drawing, terminals }: BenchSymbol): Box {
  const points = boxOfPoints(terminals.map(({ at }) => at));
  const boxes = [...drawing.map(boxOfStroke), ...(points === null ? [] : [points])];
  if (boxes.length === 0) return USUAL;
  const { left, top, right, bottom } = unionBox(USUAL, growBox(boxes.reduce(unionBox), ROOM));
  return { left: Math.floor(left), top: Math.floor(top), right: Math.ceil(right), bottom: Math.ceil(bottom) };
}
