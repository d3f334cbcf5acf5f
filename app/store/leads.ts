import type { Lead } from "../board/board-controller.ts";
import type { EditorState } from "./editor-state.ts";

/**
 * Where the leads lie after a place is pointed at; or a line that says what to point at instead. The finger goes there; a meter puts
 * down red, then black, then red again; its clamp goes round a wire.
 */
export function leadsAfter(
  { instrument, dial, leads }: Pick<EditorState, "instrument" | "dial" | "leads">,
  at: string,
): readonly Lead[] | string {
  const isTerminal = at.includes(".");
  if (instrument === "touch") return [{ at, mark: "finger" }];
  if (dial === "amps") return isTerminal ? "The clamp goes round a wire: point at one" : [{ at, mark: "red" }];
  if (!isTerminal) return "A lead goes on a terminal: point at one";
  const [first, second] = leads;
  // The one that has lain longest moves.
  if (first === undefined) return [{ at, mark: "red" }];
  if (second === undefined) return [first, { at, mark: first.mark === "red" ? "black" : "red" }];
  return [second, { at, mark: first.mark }];
}
