import type { ScreenPoint, View } from "./board-controller.ts";
import { zoomedAt } from "./zoom.ts";

/** Moving about the sheet whatever tool is in hand: wheel, pinch, two fingers, middle button, space and drag. */
export type NavigationEvent =
  | {
      readonly type: "down" | "move";
      readonly pointerId: number;
      readonly screen: ScreenPoint;
      readonly isTouch: boolean;
      readonly isMiddle: boolean;
    }
  | { readonly type: "up"; readonly pointerId: number }
  | { readonly type: "wheel"; readonly screen: ScreenPoint; readonly turn: number }
  | { readonly type: "space"; readonly isDown: boolean };

export interface NavigationState {
  readonly isSpaceDown: boolean;
  /** Fingers down, in the order they came. */
  readonly fingers: ReadonlyMap<number, ScreenPoint>;
  /** The pointer that drags the sheet, and where it was last. */
  readonly drag: { readonly pointerId: number; readonly last: ScreenPoint } | null;
  /** Two fingers were down: until all are up again, nothing else is meant. */
  readonly isPinching: boolean;
}

export interface NavigationStep {
  readonly state: NavigationState;
  readonly view: View;
  /** The event was all about moving the view: no tool gets to see it, and one in the middle of something gives it up. */
  readonly isTaken: boolean;
}

export const STILL: NavigationState = { isSpaceDown: false, fingers: new Map(), drag: null, isPinching: false };

/** One notch of a usual wheel (100 px) zooms by about an eighth. */
const ZOOM_PER_PX = 0.0012;

/** What an event does to the view. Pure: same state, view and event give the same step. */
export function navigate(state: NavigationState, view: View, event: NavigationEvent): NavigationStep {
  switch (event.type) {
    case "wheel":
      return { state, view: zoomedAt(view, Math.exp(-event.turn * ZOOM_PER_PX), event.screen), isTaken: true };
    case "space":
      return { state: { ...state, isSpaceDown: event.isDown }, view, isTaken: false };
    case "down":
      return onDown(state, view, event);
    case "move":
      return onMove(state, view, event);
    case "up":
      return onUp(state, view, event.pointerId);
  }
}

type Pointing = Extract<NavigationEvent, { type: "down" | "move" }>;

function onDown(
  state: NavigationState,
  view: View,
  { pointerId, screen, isTouch, isMiddle }: Pointing,
): NavigationStep {
  if (isTouch) {
    const fingers = new Map(state.fingers).set(pointerId, screen);
    const isPinching = state.isPinching || fingers.size > 1;
    return { state: { ...state, fingers, isPinching }, view, isTaken: isPinching };
  }
  if (!isMiddle && !state.isSpaceDown) return { state, view, isTaken: false };
  return { state: { ...state, drag: { pointerId, last: screen } }, view, isTaken: true };
}

function onMove(state: NavigationState, view: View, { pointerId, screen, isTouch }: Pointing): NavigationStep {
  if (isTouch && state.fingers.has(pointerId)) {
    const before = [...state.fingers.values()];
    const fingers = new Map(state.fingers).set(pointerId, screen);
    const moved = { ...state, fingers };
    if (!state.isPinching) return { state: moved, view, isTaken: false };
    return {
      state: moved,
      view: before.length > 1 ? pinched(view, before, [...fingers.values()]) : view,
      isTaken: true,
    };
  }
  if (state.drag?.pointerId !== pointerId) return { state, view, isTaken: false };
  const { last } = state.drag;
  return {
    state: { ...state, drag: { pointerId, last: screen } },
    view: { ...view, x: view.x + screen.x - last.x, y: view.y + screen.y - last.y },
    isTaken: true,
  };
}

function onUp(state: NavigationState, view: View, pointerId: number): NavigationStep {
  const fingers = new Map(state.fingers);
  fingers.delete(pointerId);
  const isDragEnd = state.drag?.pointerId === pointerId;
  const isTaken = state.isPinching || isDragEnd;
  return {
    state: { ...state, fingers, isPinching: state.isPinching && fingers.size > 0, drag: isDragEnd ? null : state.drag },
    view,
    isTaken,
  };
}

/** Zooms by how far the first two fingers spread and moves with the middle between them. */
function pinched(view: View, before: readonly ScreenPoint[], after: readonly ScreenPoint[]): View {
  const [a, b, c, d] = [before[0]!, before[1]!, after[0]!, after[1]!];
  const spread = Math.hypot(d.x - c.x, d.y - c.y) / Math.max(1, Math.hypot(b.x - a.x, b.y - a.y));
  const from = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const to = { x: (c.x + d.x) / 2, y: (c.y + d.y) / 2 };
  return zoomedAt({ ...view, x: view.x + to.x - from.x, y: view.y + to.y - from.y }, spread, to);
}
