import type { GridPoint, Part } from "../../core/document/index.ts";
import { standBox, type Box } from "../../core/geometry/index.ts";
import { viewOf } from "../store/part-view.ts";

/** Where a part stands; one without a place of its own counts as standing at the sheet's corner. */
export function placeOf(part: Part): GridPoint {
  return part.at ?? [0, 0];
}

/** The part's outline on the sheet, grid steps. */
export function boxOf(part: Part): Box {
  const { kind, settings } = viewOf(part);
  return standBox(kind.bounds(settings), { at: placeOf(part), turn: part.turn ?? 0, flip: part.flip ?? false });
}

export function centreOf(box: Box): GridPoint {
  return [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
}
