import type { Document, Part, Transaction } from "../../core/document/index.ts";
import type { BoardMarks } from "./marks.ts";

/** CSS pixels from the Board's left top corner. */
export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

/** A sheet point lies on the screen at `sheet * scale + (x, y)`; `scale` is CSS pixels per grid step. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

export type Theme = "light" | "dark" | "sunlight";

/**
 * `select`: pick, move, reshape, flick. `wire`: draw wires. `pan`: drag the sheet. `place`: put down `placing`. `probe`: point at
 * metal (touch test and meter): a tap tells `probe` what was pointed at.
 */
export type BoardTool = "select" | "wire" | "pan" | "place" | "probe";

/** What lies under a pointer. `id` of a terminal is its address, else the part's or wire's id. */
export interface BoardTarget {
  readonly type: "terminal" | "wire" | "part" | "sheet";
  /** Empty for the bare sheet. */
  readonly id: string;
  /** Grid steps. */
  readonly at: readonly [x: number, y: number];
}

/** What is being put down: a part without its id and place. Held by a drag from the Shelf, or until a tap on the Board. */
export interface Placing {
  readonly part: Omit<Part, "id" | "at">;
  /** The pointer that picked it up is still down: letting go over the Board places it. */
  readonly dragged: boolean;
}

/** A meter lead or the touch test's finger, drawn on the Board. */
export interface Lead {
  /** A terminal's address or a wire's id. */
  readonly at: string;
  readonly mark: "red" | "black" | "finger";
}

/** Asks the Board to bring places into view; a new object asks again. */
export interface Reveal {
  /** Terminal addresses, wire ids or part ids. Empty: the whole drawing. */
  readonly places: readonly string[];
}

/** All the Board shows. A new object on each change; members keep their identity while they don't change. */
export interface BoardSnapshot {
  readonly document: Document;
  /** Counts up with each change of `document`; marks of an older revision are shown as far as they still fit. */
  readonly revision: number;
  /** Part and wire ids. */
  readonly selection: ReadonlySet<string>;
  readonly view: View;
  /** `null` until the first answer of the analysis. */
  readonly marks: BoardMarks | null;
  /** A change makes the Board read its palette again from the CSS custom properties of `board.css`. */
  readonly theme: Theme;
  readonly tool: BoardTool;
  readonly placing: Placing | null;
  readonly leads: readonly Lead[];
  readonly reveal: Reveal | null;
  /** Print wires' lettering and parts' captions. */
  readonly lettering: boolean;
  /** Places to draw attention to: the snag chosen in the list, the row under the pointer. */
  readonly spotlight: readonly string[];
}

/** What the Board needs of the rest of the app; the app's store implements it. Framework-free: the Board redraws without React. */
export interface BoardController {
  subscribe(listener: () => void): () => void;
  getSnapshot(): BoardSnapshot;
  /** One undo step per call. */
  dispatch(transaction: Transaction): void;
  select(ids: readonly string[]): void;
  setView(view: View): void;
  /** The Board's size in CSS pixels, told when it is shown and whenever it changes. */
  setSize(width: number, height: number): void;
  setTool(tool: BoardTool): void;
  /** `null` when put down or given up. */
  setPlacing(placing: Placing | null): void;
  /** Moves a control to its next position; a momentary one springs back when `release` is called. */
  flick(controlId: string): void;
  release(controlId: string): void;
  openMenu(at: ScreenPoint, target: BoardTarget): void;
  probe(target: BoardTarget): void;
}
