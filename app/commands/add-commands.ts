import { systemOf, type Document, type Edit, type GridPoint, type Part } from "../../core/document/index.ts";
import { partKinds, settingsOf, type PartKind } from "../../core/parts/index.ts";
import { freeSpot } from "../../core/placing/index.ts";
import { documentOf, type EditorState } from "../store/editor-state.ts";
import { nextId } from "../store/ids.ts";
import { placeName } from "../store/part-view.ts";
import { effect, type Command, type Plan } from "./command.ts";

/** What a note says until the person does. */
const FRESH_NOTE = "Note";
/** What a few words take up, about where the note stands. Grid steps. */
const NOTE_ROOM = { left: 0, top: -1, right: 8, bottom: 1 };

/** One command for each kind of part, and drawing a wire by keys. */
export const addCommands: readonly Command[] = [
  { id: "wire", title: "Draw a wire", group: "Add", keys: ["W"], words: "connect lead cable join", plan: startWire },
  { id: "note", title: "Write a note here", group: "Add", words: "text remark comment label", plan: addNote },
  ...partKinds.map((kind): Command => ({
    id: `add ${kind.kind}`,
    title: `Add ${kind.title.toLowerCase()}`,
    group: "Add",
    words: kind.words.join(" "),
    plan: (state) => addPart(state, kind),
  })),
];

/** A part of this kind on a free spot as near as can be to the middle of the Board. */
export function addPart(state: EditorState, kind: PartKind): Plan {
  const document = documentOf(state);
  const part = freshPart(document, kind);
  const at = freeSpot(document, kind.bounds(settingsOf(part)), middleOfBoard(state));
  return {
    transaction: {
      label: `Add ${kind.title.toLowerCase()} ${part.id.toUpperCase()}`,
      edits: [{ op: "add-part", part: { ...part, at } }],
    },
    select: [part.id],
  };
}

/** A new part of this kind under the next free id, with what the drawing's voltage asks for. */
export function freshPart(document: Document, kind: PartKind): Part {
  const props = kind.fresh?.(systemOf(document).nominalV) ?? {};
  return { id: nextId(document, kind.letter), kind: kind.kind, ...(Object.keys(props).length > 0 && { props }) };
}

/** A wire between two terminals, sizes and length left for the person to say. */
export function addWire(state: EditorState, from: string, to: string): Plan {
  const document = documentOf(state);
  if (from === to) return { reason: "A wire needs two terminals" };
  const id = nextId(document, "w");
  const edit: Edit = { op: "add-wire", wire: { id, from, to } };
  const label = `Wire from ${placeName(document, from)} to ${placeName(document, to)}`;
  return { transaction: { label, edits: [edit] }, select: [id], effects: [{ do: "wire-from", terminal: null }] };
}

/** A note where the menu was opened, else on a free spot near the middle of the Board, with its words ready to be changed. */
function addNote(state: EditorState): Plan {
  const document = documentOf(state);
  const id = nextId(document, "n");
  const [x, y] =
    state.menu?.target.type === "sheet" ? state.menu.target.at : freeSpot(document, NOTE_ROOM, middleOfBoard(state));
  const note = { id, at: [Math.round(x), Math.round(y)], text: FRESH_NOTE } as const;
  return {
    transaction: { label: "Write a note", edits: [{ op: "set-notes", notes: [...(document.notes ?? []), note] }] },
    select: [id],
    effects: [{ do: "show", place: "card" }],
  };
}

function startWire(state: EditorState): Plan {
  if (documentOf(state).parts.length < 2) return { reason: "A wire needs two parts" };
  return effect({ do: "show", place: "wire-to" });
}

function middleOfBoard({ view, boardSize }: EditorState): GridPoint {
  return [(boardSize.width / 2 - view.x) / view.scale, (boardSize.height / 2 - view.y) / view.scale];
}
