import type { Transaction } from "../../core/document/index.ts";
import type { BoardTool, Placing, View } from "../board/board-controller.ts";
import type { EditorState, InstrumentId, PlaceId } from "../store/editor-state.ts";

/** What a command wants done besides an edit; `run-command.ts` does it. */
export type Effect =
  | {
      readonly do: "undo" | "redo" | "paste" | "new-drawing" | "open-file" | "save-file" | "copy-drawing" | "take-over";
    }
  | { readonly do: "clipboard"; readonly text: string }
  | { readonly do: "show"; readonly place: PlaceId | null }
  | { readonly do: "view"; readonly view: View }
  | { readonly do: "reveal"; readonly places: readonly string[] }
  | { readonly do: "spotlight"; readonly places: readonly string[]; readonly snag: string | null }
  | { readonly do: "tool"; readonly tool: BoardTool }
  | { readonly do: "placing"; readonly placing: Placing | null }
  | { readonly do: "instrument"; readonly instrument: InstrumentId | null }
  | { readonly do: "wire-from"; readonly terminal: string | null }
  | { readonly do: "flick"; readonly control: string }
  | { readonly do: "stand"; readonly positions: Readonly<Record<string, string>> }
  | { readonly do: "preferences"; readonly change: Partial<EditorState["preferences"]> }
  | { readonly do: "open-demo"; readonly name: string };

/** What a command would do now; or why it can't, in words shown beside its greyed name. */
export type Plan =
  | { readonly reason: string }
  | {
      readonly transaction?: Transaction;
      /** Selected afterwards. */
      readonly select?: readonly string[];
      readonly effects?: readonly Effect[];
      readonly say?: string;
    };

export type CommandGroup =
  "Drawing" | "Edit" | "Arrange" | "Add" | "Operate" | "Snags" | "Try out" | "Look" | "Places" | "On the Board";

/** One thing a person can do. Menus, the command box, the shortcut help and the keys all read the one list. */
export interface Command {
  readonly id: string;
  readonly title: string;
  /** On a button, where the title is too long. */
  readonly short?: string;
  readonly group: CommandGroup;
  /** "Mod" is Ctrl, or Command on a Mac. First is the one shown. */
  readonly keys?: readonly string[];
  /** Other words to find it by. */
  readonly words?: string;
  /** Pure: looks at the state, changes nothing. */
  readonly plan: (state: EditorState) => Plan;
  /** Why it can't be done now, `null` if it can: for commands whose plan costs too much to work out for a greyed name. */
  readonly reason?: (state: EditorState) => string | null;
}

/** Why a command can't be done now; `null` when it can. */
export function whyNot(command: Command, state: EditorState): string | null {
  if (command.reason !== undefined) return command.reason(state);
  const plan = command.plan(state);
  return "reason" in plan ? plan.reason : null;
}

const NOTHING_SELECTED = "Nothing is selected";

/** The cheap check of commands that need a selection. */
export function needsSelection(state: EditorState): string | null {
  return state.selection.size === 0 ? NOTHING_SELECTED : null;
}

export function effect(...effects: readonly Effect[]): Plan {
  return { effects };
}

/** "part", "3 parts". */
export function counted(count: number, noun: string): string {
  return count === 1 ? noun : `${count} ${noun}s`;
}
