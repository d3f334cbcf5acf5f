import { NO_OVERLAY } from "../board-overlay.ts";
import { pick, TERMINAL_REACH } from "./picking.ts";
import type { Tool } from "./tool.ts";

/** Points at metal, for the touch test and the meter: a tap tells which terminal or wire was meant. */
export const probeTool: Tool<null> = {
  start: null,
  step(state, event, sheet) {
    const still = { state, overlay: NO_OVERLAY, acts: [], cursor: "crosshair" } as const;
    if (event.type === "cancel" || event.type === "leave" || event.type === "menu") return still;
    if (event.type === "key") {
      return event.key === "Escape" ? { ...still, acts: [{ act: "tool", tool: "select" }] } : still;
    }
    const reach = event.isTouch ? TERMINAL_REACH.touch : TERMINAL_REACH.mouse;
    const target = pick(sheet.scene, event.at, sheet.view.scale, reach);
    const isMetal = target.type === "terminal" || target.type === "wire";
    const overlay = { ...NO_OVERLAY, attract: isMetal ? target.at : null };
    const acts = event.type === "up" && isMetal ? [{ act: "probe", target } as const] : [];
    return { state, overlay, acts, cursor: "crosshair" };
  },
};
