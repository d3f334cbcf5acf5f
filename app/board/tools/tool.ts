import type { Document, Transaction } from "../../../core/document/index.ts";
import type { BoardTarget, BoardTool, Placing, ScreenPoint, View } from "../board-controller.ts";
import type { BoardOverlay } from "../board-overlay.ts";
import type { Scene } from "../paint/scene.ts";
import type { BoardEvent } from "./board-event.ts";

/** What a gesture may look at. It changes none of it. */
export interface Sheet {
  readonly document: Document;
  readonly scene: Scene;
  readonly selection: ReadonlySet<string>;
  readonly view: View;
  readonly placing: Placing | null;
}

/** What a gesture asks to be done. */
export type Act =
  | { readonly act: "dispatch"; readonly transaction: Transaction }
  | { readonly act: "select"; readonly ids: readonly string[] }
  | { readonly act: "view"; readonly view: View }
  | { readonly act: "tool"; readonly tool: BoardTool }
  | { readonly act: "placing"; readonly placing: Placing | null }
  | { readonly act: "flick" | "release"; readonly controlId: string }
  | { readonly act: "menu"; readonly at: ScreenPoint; readonly target: BoardTarget }
  | { readonly act: "probe"; readonly target: BoardTarget };

export type Cursor = "default" | "pointer" | "grab" | "grabbing" | "crosshair" | "move" | "copy";

/** Where a gesture stands after an event: its new state, what shows meanwhile, and what is to be done. */
export interface Step<S> {
  readonly state: S;
  readonly overlay: BoardOverlay;
  readonly acts: readonly Act[];
  readonly cursor: Cursor;
}

/** A way of working on the Board, as a state machine: same state, same event, same sheet give the same step. */
export interface Tool<S> {
  readonly start: S;
  step(state: S, event: BoardEvent, sheet: Sheet): Step<S>;
}
