import { createContext, use } from "react";
import { useStore } from "zustand";
import type { Runner } from "./commands/run-command.ts";
import type { Keeper } from "./keeping/keeper.ts";
import type { OwnSymbols } from "./bench/own-symbols.ts";
import type { Document } from "../core/document/index.ts";
import { documentOf, type EditorState } from "./store/editor-state.ts";
import type { Analyst } from "./worker/analyst.ts";
import type { Editor } from "./store/editor.ts";

/** What every panel works with. */
export interface AppTools {
  readonly editor: Editor;
  readonly runner: Runner;
  readonly keeper: Keeper;
  readonly symbols: OwnSymbols;
  /** Asks the worker something about the drawing it holds. */
  readonly consult: Analyst["consult"];
}

const Context = createContext<AppTools | null>(null);

export const AppContext = Context.Provider;

export function useApp(): AppTools {
  const tools = use(Context);
  if (tools === null) throw new Error("useApp: got no AppContext above this panel; wanted one around the whole app");
  return tools;
}

/** A piece of the editor's state; the panel renders again when that piece changes. */
export function useEditor<T>(select: (state: EditorState) => T): T {
  return useStore(useApp().editor.store, select);
}

export function useDrawing(): Document {
  return useEditor(documentOf);
}
