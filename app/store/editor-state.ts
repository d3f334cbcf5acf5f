import { startHistory, type Document, type History } from "../../core/document/index.ts";
import type { Report } from "../../core/report/index.ts";
import type {
  BoardTarget,
  BoardTool,
  Lead,
  Placing,
  Reveal,
  ScreenPoint,
  Theme,
  View,
} from "../board/board-controller.ts";
import type { BoardMarks } from "../board/marks.ts";
import type { Positions, Present } from "../worker/protocol.ts";
import type { Preferences } from "./preferences.ts";

/** How the work is kept in this browser. */
export type Keeping =
  | { readonly status: "kept"; readonly atMs: number }
  | { readonly status: "waiting" }
  /** Storage refuses: the person is offered the file. */
  | { readonly status: "refused"; readonly reason: string }
  /** Another tab kept a later one: nothing is overwritten, a copy is offered. */
  | { readonly status: "conflict" };

/** A panel or dialog that can be opened; ids are those of `app/panels/index.ts`. */
export type PlaceId =
  | "shelf"
  | "card"
  | "controls"
  | "snags"
  | "outline"
  | "drawings"
  | "papers"
  | "readings"
  | "revisions"
  | "help"
  | "settings"
  | "sizing"
  | "command-box"
  | "wire-to"
  | "bench";

/** Lies on the Board while it is used: points at metal, reads between two leads, plays a fault. */
export type InstrumentId = "touch" | "meter" | "drill";
/** What the meter measures: between its leads, or round a wire. */
export type MeterDial = "volts" | "amps" | "ohms";

/** A line at the edge of the screen. It stays until closed or replaced by one with the same `about`. */
export interface Notice {
  readonly about: string;
  readonly tone: "plain" | "trouble";
  readonly text: string;
  readonly action?: { readonly label: string; readonly run: () => void };
}

export interface EditorState {
  readonly drawingId: string;
  readonly history: History;
  /** Counts up with each change of the drawing. */
  readonly revision: number;
  readonly selection: ReadonlySet<string>;
  /** Where the controls stand now; one not named is at rest. */
  readonly positions: Positions;
  readonly view: View;
  /** CSS pixels; 0 until the Board is shown. */
  readonly boardSize: { readonly width: number; readonly height: number };
  readonly tool: BoardTool;
  readonly placing: Placing | null;
  readonly instrument: InstrumentId | null;
  readonly dial: MeterDial;
  readonly leads: readonly Lead[];
  readonly reveal: Reveal | null;
  readonly spotlight: readonly string[];
  /** Key of the snag chosen in the list; see `snagKey`. */
  readonly chosenSnag: string | null;
  /** The terminal a wire drawn by keys starts from. */
  readonly wireFrom: string | null;
  readonly menu: { readonly at: ScreenPoint; readonly target: BoardTarget } | null;

  /** The report on the drawing, with the revision it speaks of; an older one is shown as waiting. */
  readonly report: Report | null;
  readonly reportRevision: number;
  readonly present: Present | null;
  readonly marks: BoardMarks | null;
  readonly analysis: "waiting" | "done" | "stuck";

  readonly keeping: Keeping;
  /** `looking`: another tab has this drawing open for editing. */
  readonly access: "editing" | "looking";
  /** Number of the last save kept in this browser. */
  readonly save: number;
  readonly notices: readonly Notice[];
  readonly place: PlaceId | null;
  readonly preferences: Preferences;
  readonly theme: Theme;
  /** What the live region says next; `turn` makes the same words speak again. */
  readonly said: { readonly text: string; readonly turn: number };
}

/** An empty drawing. */
export const EMPTY_DOCUMENT: Document = { format: "groundstrap", version: 1, parts: [], wires: [] };

/** Fits 12 px to a grid step, which stands for 5 mm on paper. */
const FIRST_VIEW: View = { x: 40, y: 40, scale: 12 };

export function firstState(preferences: Preferences, theme: Theme): EditorState {
  return {
    drawingId: "",
    history: startHistory(EMPTY_DOCUMENT),
    revision: 0,
    selection: new Set(),
    positions: {},
    view: FIRST_VIEW,
    boardSize: { width: 0, height: 0 },
    tool: "select",
    placing: null,
    instrument: null,
    dial: "volts",
    leads: [],
    reveal: null,
    spotlight: [],
    chosenSnag: null,
    wireFrom: null,
    menu: null,
    report: null,
    reportRevision: -1,
    present: null,
    marks: null,
    analysis: "waiting",
    keeping: { status: "kept", atMs: 0 },
    access: "editing",
    save: 0,
    notices: [],
    place: null,
    preferences,
    theme,
    said: { text: "", turn: 0 },
  };
}

/** The drawing as it stands. */
export function documentOf(state: EditorState): Document {
  return state.history.present;
}
