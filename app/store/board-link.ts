import type { BoardController, BoardSnapshot } from "../board/board-controller.ts";
import { documentOf, type EditorState } from "./editor-state.ts";
import type { Editor } from "./editor.ts";

/** The editor as the Board sees it. */
export function boardLink(editor: Editor): BoardController {
  let snapshot = snapshotOf(editor.state);
  return {
    subscribe: (listener) =>
      editor.store.subscribe((state) => {
        const next = snapshotOf(state);
        if (isSame(snapshot, next)) return;
        snapshot = next;
        listener();
      }),
    getSnapshot: () => snapshot,
    dispatch: (transaction) => editor.dispatch(transaction),
    select: (ids) => editor.select(ids),
    setView: (view) => editor.set({ view }),
    setSize: (width, height) => editor.resizeBoard(width, height),
    setTool: (tool) => editor.set({ tool }),
    setPlacing: (placing) => editor.set({ placing, tool: placing === null ? "select" : "place" }),
    flick: (controlId) => editor.flick(controlId),
    release: (controlId) => editor.release(controlId),
    openMenu: (at, target) => editor.set({ menu: { at, target } }),
    probe: (target) => editor.probe(target.id),
  };
}

function snapshotOf(state: EditorState): BoardSnapshot {
  return {
    document: documentOf(state),
    revision: state.revision,
    selection: state.selection,
    view: state.view,
    marks: state.marks,
    theme: state.theme,
    tool: state.tool,
    placing: state.placing,
    leads: state.leads,
    reveal: state.reveal,
    lettering: state.preferences.lettering,
    spotlight: state.spotlight,
  };
}

function isSame(a: BoardSnapshot, b: BoardSnapshot): boolean {
  return (Object.keys(a) as (keyof BoardSnapshot)[]).every((key) => a[key] === b[key]);
}
