import type { GridPoint } from "../../../core/document/index.ts";
import type { Point } from "../../../core/geometry/index.ts";
import { type BoardOverlay, NO_OVERLAY } from "../board-overlay.ts";
import type { PointerStep } from "./board-event.ts";
import { canJoin, joinEdits, type Joinable } from "./join.ts";
import type { Sheet, Step, Tool } from "./tool.ts";
import { draftRoute, joinableAt, snapped } from "./wire-draft.ts";

/**
 * Draws wires. A press on a terminal or a wire starts one; it ends on the next terminal or wire pressed, or where a drag is
 * let go. Presses on the bare sheet between are its corners. Escape gives it up, Backspace takes the last corner back.
 */
type WireState =
  | { readonly phase: "idle" }
  | {
      readonly phase: "drawing";
      readonly from: Joinable;
      readonly via: readonly GridPoint[];
      readonly pointer: Point;
      /** Still on the press that started it or put in a corner: letting go near it is no end. */
      readonly pressedAt: Point | null;
    };

type Drawing = Extract<WireState, { phase: "drawing" }>;

const IDLE: WireState = { phase: "idle" };
/** A drag shorter than this is a press. Grid steps. */
const PRESS_STEPS = 1;

export const wireTool: Tool<WireState> = {
  start: IDLE,
  step(state, event, sheet) {
    if (event.type === "cancel") return rest(null);
    if (event.type === "key") return onKey(state, event.key, sheet);
    if (event.type === "leave") return state.phase === "drawing" ? drawing(state, sheet, null) : rest(null);
    return state.phase === "idle" ? whileIdle(event, sheet) : whileDrawing(state, event, sheet);
  },
};

function whileIdle(event: PointerStep, sheet: Sheet): Step<WireState> {
  const target = joinableAt(sheet.scene, event.at, sheet.view.scale, event.isTouch);
  if (event.type !== "down" || target === null) return rest(target);
  const state: Drawing = { phase: "drawing", from: target, via: [], pointer: event.at, pressedAt: event.at };
  return drawing(state, sheet, target);
}

function whileDrawing(state: Drawing, event: PointerStep, sheet: Sheet): Step<WireState> {
  const except = state.from.on === "terminal" ? state.from.address : undefined;
  const found = joinableAt(sheet.scene, event.at, sheet.view.scale, event.isTouch, except);
  const target = found !== null && canJoin(state.from, found) ? found : null;
  const moved = { ...state, pointer: event.at };
  if (event.type === "menu") return rest(null);
  if (event.type === "down") {
    if (target !== null) return finished(moved, target, sheet);
    return drawing({ ...moved, via: [...state.via, snapped(event.at)], pressedAt: event.at }, sheet, null);
  }
  if (event.type === "up") {
    const isDrag = state.pressedAt !== null && apart(state.pressedAt, event.at) > PRESS_STEPS;
    if (isDrag && target !== null) return finished(moved, target, sheet);
    if (isDrag) return drawing({ ...moved, via: [...state.via, snapped(event.at)], pressedAt: null }, sheet, null);
    return drawing({ ...moved, pressedAt: null }, sheet, target);
  }
  return drawing(moved, sheet, target);
}

function onKey(state: WireState, key: string, sheet: Sheet): Step<WireState> {
  if (state.phase === "idle" || key === "Escape") return rest(null);
  if (key === "Backspace") return drawing({ ...state, via: state.via.slice(0, -1) }, sheet, null);
  return drawing(state, sheet, null);
}

function finished(state: Drawing, target: Joinable, sheet: Sheet): Step<WireState> {
  const { transaction, wireId } = joinEdits(sheet.document, sheet.scene, state.from, target, state.via);
  const acts = [
    { act: "dispatch", transaction },
    { act: "select", ids: [wireId] },
  ] as const;
  return { state: IDLE, overlay: NO_OVERLAY, acts, cursor: "crosshair" };
}

function drawing(state: Drawing, sheet: Sheet, target: Joinable | null): Step<WireState> {
  const draft = draftRoute(sheet.scene, state.from, state.via, target ?? state.pointer);
  const overlay: BoardOverlay = { ...NO_OVERLAY, draft, attract: target?.at ?? null };
  return { state, overlay, acts: [], cursor: "crosshair" };
}

function rest(target: Joinable | null): Step<WireState> {
  return { state: IDLE, overlay: { ...NO_OVERLAY, attract: target?.at ?? null }, acts: [], cursor: "crosshair" };
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
