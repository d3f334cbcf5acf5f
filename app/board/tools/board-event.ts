import type { Point } from "../../../core/geometry/index.ts";
import type { ScreenPoint } from "../board-controller.ts";

/** What the browser tells, freed of the browser: gestures are worked out from these alone. */
export type BoardEvent = PointerStep | { readonly type: "key"; readonly key: string } | { readonly type: "cancel" };

/**
 * One step of a pointer. `hold`: it has rested in place for half a second. `leave`: it went off the Board with nothing pressed.
 * `menu`: the second button, or its like.
 */
export interface PointerStep {
  readonly type: "down" | "move" | "up" | "hold" | "leave" | "menu";
  /** CSS pixels from the Board's corner. */
  readonly screen: ScreenPoint;
  /** The same spot in grid steps. */
  readonly at: Point;
  readonly isTouch: boolean;
  /** Shift, Ctrl or Command: add to what is selected. */
  readonly isAdding: boolean;
}
