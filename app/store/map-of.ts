import type { Document } from "../../core/document/index.ts";
import { growBox, standBox, unionBox, type Box, type Point } from "../../core/geometry/index.ts";
import type { View } from "../board/board-controller.ts";
import type { EditorState } from "./editor-state.ts";
import { documentOf } from "./editor-state.ts";
import { viewOf } from "./part-view.ts";

/** The drawing from far off: where its parts stand. Grid steps. */
export interface DrawingMap {
  readonly parts: readonly Box[];
  /** All of it, with a rim. `null`: an empty sheet. */
  readonly box: Box | null;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

const RIM = 3;
/** A Board narrower than this has no room to spare for a map. CSS pixels. */
const LEAST_BOARD_PX = 600;

const worked = new WeakMap<Document["parts"], DrawingMap>();

export function mapOf({ parts }: Document): DrawingMap {
  let map = worked.get(parts);
  if (map === undefined) {
    const boxes = parts.map((part) => {
      const { kind, settings } = viewOf(part);
      const stance = { at: part.at ?? ([0, 0] as const), turn: part.turn ?? 0, flip: part.flip ?? false };
      return standBox(kind.bounds(settings), stance);
    });
    map = { parts: boxes, box: boxes.length === 0 ? null : growBox(boxes.reduce(unionBox), RIM) };
    worked.set(parts, map);
  }
  return map;
}

/** What the Board shows of the sheet. Grid steps. */
export function boxInView({ x, y, scale }: View, { width, height }: Size): Box {
  return { left: -x / scale, top: -y / scale, right: (width - x) / scale, bottom: (height - y) / scale };
}

/** The view at the same scale with a point of the sheet in its middle. */
export function viewAbout(view: View, [x, y]: Point, { width, height }: Size): View {
  return { scale: view.scale, x: width / 2 - x * view.scale, y: height / 2 - y * view.scale };
}

/** Whether the map is to be seen: when the person wants it, or unasked where there is room and part of the drawing lies out of view. */
export function isMapShown(state: EditorState): boolean {
  const { preferences, view, boardSize } = state;
  const { parts } = mapOf(documentOf(state));
  if (preferences.map !== "auto" || parts.length === 0) return preferences.map === "on" && parts.length > 0;
  if (boardSize.width < LEAST_BOARD_PX) return false;
  const shown = boxInView(view, boardSize);
  const all = parts.reduce(unionBox);
  return all.left < shown.left || all.top < shown.top || all.right > shown.right || all.bottom > shown.bottom;
}
