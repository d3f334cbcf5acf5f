import { splitAddress, type Document, type Edit } from "../../core/document/index.ts";
import { documentOf, type EditorState } from "../store/editor-state.ts";
import { placeName } from "../store/part-view.ts";
import { copyText, pasteOf, piecesOf } from "./clipboard.ts";
import { counted, effect, needsSelection, type Command, type Plan } from "./command.ts";

export const editCommands: readonly Command[] = [
  {
    id: "undo",
    title: "Undo",
    group: "Edit",
    keys: ["Mod+Z"],
    plan: (state) => (state.history.past.length > 0 ? effect({ do: "undo" }) : { reason: "Nothing to undo" }),
  },
  {
    id: "redo",
    title: "Redo",
    group: "Edit",
    keys: ["Mod+Shift+Z", "Mod+Y"],
    plan: (state) => (state.history.future.length > 0 ? effect({ do: "redo" }) : { reason: "Nothing to redo" }),
  },
  { id: "cut", title: "Cut", group: "Edit", keys: ["Mod+X"], plan: cut, reason: needsSelection },
  { id: "copy", title: "Copy", group: "Edit", keys: ["Mod+C"], plan: copy, reason: needsPart },
  { id: "paste", title: "Paste", group: "Edit", keys: ["Mod+V"], plan: () => effect({ do: "paste" }) },
  {
    id: "duplicate",
    title: "Duplicate",
    group: "Edit",
    keys: ["Mod+D"],
    words: "copy again twin",
    plan: duplicate,
    reason: needsPart,
  },
  {
    id: "delete",
    title: "Delete",
    group: "Edit",
    keys: ["Delete", "Backspace"],
    words: "remove",
    plan: remove,
    reason: needsSelection,
  },
  {
    id: "select-all",
    title: "Select all",
    group: "Edit",
    keys: ["Mod+A"],
    plan: (state) => {
      const { parts, wires, notes = [] } = documentOf(state);
      return { select: [...parts, ...wires, ...notes].map((thing) => thing.id) };
    },
  },
  {
    id: "let-go",
    title: "Let go of everything",
    group: "Edit",
    keys: ["Escape"],
    words: "select none cancel",
    plan: () => ({
      select: [],
      effects: [
        { do: "instrument", instrument: null },
        { do: "placing", placing: null },
        { do: "wire-from", terminal: null },
        { do: "tool", tool: "select" },
        { do: "spotlight", places: [], snag: null },
        { do: "show", place: null },
      ],
    }),
  },
];

function copy(state: EditorState): Plan {
  return effect({ do: "clipboard", text: copyText(documentOf(state), state.selection) });
}

function cut(state: EditorState): Plan {
  return { ...copy(state), ...remove(state) };
}

function needsPart(state: EditorState): string | null {
  const { parts, notes = [] } = piecesOf(documentOf(state), state.selection);
  return parts.length + notes.length === 0 ? "No part is selected" : null;
}

function duplicate(state: EditorState): Plan {
  const document = documentOf(state);
  const pieces = piecesOf(document, state.selection);
  const pasted = pasteOf(document, pieces, [2, 2]);
  return {
    transaction: { label: `Duplicate ${counted(pasted.ids.length, "thing")}`, edits: pasted.edits },
    select: pasted.ids,
  };
}

function remove(state: EditorState): Plan {
  const document = documentOf(state);
  const edits = removal(document, state.selection);
  const [only] = state.selection;
  const what = state.selection.size === 1 ? placeName(document, only!) : `${state.selection.size} things`;
  return { transaction: { label: `Delete ${what}`, edits } };
}

/** Wires on a part go with it, so only those that stay otherwise are taken out by name. */
function removal(document: Document, ids: ReadonlySet<string>): Edit[] {
  const gone = document.parts.filter((part) => ids.has(part.id)).map((part) => part.id);
  const isGone = new Set(gone);
  const onGone = (address: string) => isGone.has(splitAddress(address)[0]);
  const wires = document.wires.filter((wire) => ids.has(wire.id) && !onGone(wire.from) && !onGone(wire.to));
  const notes = document.notes ?? [];
  const isLeft = notes.filter((note) => !ids.has(note.id));
  return [
    ...(isLeft.length < notes.length ? [{ op: "set-notes", notes: isLeft } as const] : []),
    ...wires.map((wire): Edit => ({ op: "remove-wire", id: wire.id })),
    ...gone.map((id): Edit => ({ op: "remove-part", id })),
  ];
}
