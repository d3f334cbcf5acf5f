import { type Box, growBox } from "../../core/geometry/index.ts";
import type { ScreenPoint, View } from "./board-controller.ts";

/** Farthest and nearest view, in CSS pixels per grid step. */
const LEAST_SCALE = 0.5;
const MOST_SCALE = 64;
/** The scale a single place is shown at when the view is too far away to make it out. */
const READING_SCALE = 16;
/** A place in view from this scale on stays where it is: the person arranged it so. */
const SEEN_SCALE = 4;
/** Room left around what is brought into view. Grid steps. */
const MARGIN = 2;

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The view `factor` times nearer, with the sheet kept where it is at one spot of the screen. */
export function zoomedAt(view: View, factor: number, { x, y }: ScreenPoint): View {
  const scale = clampScale(view.scale * factor);
  const grown = scale / view.scale;
  return { scale, x: x - (x - view.x) * grown, y: y - (y - view.y) * grown };
}

/** The nearest view that shows the whole box in the middle. */
export function viewOfAll(box: Box, { width, height }: Size): View {
  const { left, top, right, bottom } = growBox(box, MARGIN);
  const scale = clampScale(Math.min(width / (right - left), height / (bottom - top), 32));
  return centred({ left, top, right, bottom }, scale, { width, height });
}

/**
 * The view that shows a place: the same one when the place is in view and large enough already; else moved to its middle, and
 * nearer or farther only as needed.
 */
export function viewOfPlace(view: View, box: Box, size: Size): View {
  const isInView =
    box.left * view.scale + view.x >= 0 &&
    box.top * view.scale + view.y >= 0 &&
    box.right * view.scale + view.x <= size.width &&
    box.bottom * view.scale + view.y <= size.height;
  if (isInView && view.scale >= SEEN_SCALE) return view;
  const room = growBox(box, MARGIN);
  const fitting = Math.min(size.width / (room.right - room.left), size.height / (room.bottom - room.top));
  return centred(room, clampScale(Math.min(fitting, Math.max(view.scale, READING_SCALE))), size);
}

function centred(box: Box, scale: number, { width, height }: Size): View {
  return {
    scale,
    x: width / 2 - ((box.left + box.right) / 2) * scale,
    y: height / 2 - ((box.top + box.bottom) / 2) * scale,
  };
}

function clampScale(scale: number): number {
  return Math.min(MOST_SCALE, Math.max(LEAST_SCALE, scale));
}
