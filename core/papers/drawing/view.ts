import type { Box, Point } from "../../geometry/index.ts";

/** How grid steps of the sheet come to lie on a page: scaled, then moved. Millimetres. */
export interface View {
  readonly mmPerStep: number;
  readonly leftMm: number;
  readonly topMm: number;
}

export function onPage(view: View, [x, y]: Point): Point {
  return [view.leftMm + x * view.mmPerStep, view.topMm + y * view.mmPerStep];
}

export function boxOnPage(view: View, box: Box): Box {
  const [left, top] = onPage(view, [box.left, box.top]);
  const [right, bottom] = onPage(view, [box.right, box.bottom]);
  return { left, top, right, bottom };
}

/** The view that puts `box` (grid steps) in the middle of `room` (millimetres), or at its top where `atTop`. */
export function viewInto(box: Box, room: Box, mmPerStep: number, atTop: boolean): View {
  const freeX = room.right - room.left - (box.right - box.left) * mmPerStep;
  const freeY = room.bottom - room.top - (box.bottom - box.top) * mmPerStep;
  return {
    mmPerStep,
    leftMm: room.left + freeX / 2 - box.left * mmPerStep,
    topMm: room.top + (atTop ? 0 : freeY / 2) - box.top * mmPerStep,
  };
}
