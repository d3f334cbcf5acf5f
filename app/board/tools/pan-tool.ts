import type { ScreenPoint, View } from "../board-controller.ts";
import { NO_OVERLAY } from "../board-overlay.ts";
import type { Tool } from "./tool.ts";

/** Drags the sheet about. */
type PanState =
  { readonly phase: "idle" } | { readonly phase: "dragging"; readonly from: ScreenPoint; readonly view: View };

const IDLE: PanState = { phase: "idle" };

export const panTool: Tool<PanState> = {
  start: IDLE,
  step(state, event, sheet) {
    const idle = { state: IDLE, overlay: NO_OVERLAY, acts: [], cursor: "grab" } as const;
    if (event.type === "down") {
      return { ...idle, state: { phase: "dragging", from: event.screen, view: sheet.view }, cursor: "grabbing" };
    }
    if (state.phase === "idle" || event.type !== "move") return event.type === "hold" ? { ...idle, state } : idle;
    const { from, view } = state;
    const moved = { ...view, x: view.x + event.screen.x - from.x, y: view.y + event.screen.y - from.y };
    return { state, overlay: NO_OVERLAY, acts: [{ act: "view", view: moved }], cursor: "grabbing" };
  },
};
