import { produce, type Draft } from "immer";
import type {
  Cover,
  Document,
  GridPoint,
  JobRecords,
  Note,
  Part,
  Sheet,
  Situation,
  SystemSettings,
  Wire,
} from "./types.ts";

/**
 * Everything that can happen to a document. A remedy, a command and a gesture all come down to a list of these, applied
 * together and undone together. In a change record a key set to `undefined` is removed from the document.
 */
export type Edit =
  | { readonly op: "add-part"; readonly part: Part }
  /** Removes the part and every wire on it. */
  | { readonly op: "remove-part"; readonly id: string }
  | { readonly op: "set-part"; readonly id: string; readonly change: PartChange }
  | { readonly op: "set-props"; readonly id: string; readonly change: Readonly<Record<string, unknown>> }
  | { readonly op: "set-cover"; readonly terminal: string; readonly cover: Cover | undefined }
  | { readonly op: "add-wire"; readonly wire: Wire }
  | { readonly op: "remove-wire"; readonly id: string }
  | {
      readonly op: "set-wire";
      readonly id: string;
      readonly change: { readonly [K in keyof Wire]?: Wire[K] | undefined };
    }
  | { readonly op: "set-sheet"; readonly change: { readonly [K in keyof Sheet]?: Sheet[K] | undefined } }
  | {
      readonly op: "set-system";
      readonly change: { readonly [K in keyof SystemSettings]?: SystemSettings[K] | undefined };
    }
  | { readonly op: "set-situations"; readonly situations: readonly Situation[] }
  | { readonly op: "set-notes"; readonly notes: readonly Note[] }
  | { readonly op: "set-records"; readonly change: { readonly [K in keyof JobRecords]?: JobRecords[K] | undefined } };

/** All of a part but its id, its settings and its covers, which have edits of their own. */
export type PartChange = Partial<Omit<Part, "id" | "props" | "covers" | "label" | "fixed">> & {
  readonly label?: string | undefined;
  readonly fixed?: readonly string[] | undefined;
};

/** What a person did, as one step to undo. */
export interface Transaction {
  /** Names the step in the undo list: "Move 3 parts". */
  readonly label: string;
  readonly edits: readonly Edit[];
}

/** A part moved or turned: the edit a drag ends in. */
export type Placement = {
  readonly id: string;
  readonly at: GridPoint;
  readonly turn?: Part["turn"];
  readonly flip?: boolean;
};

/**
 * The document with all edits applied in order; the input is untouched, unchanged pieces are shared, and the result is frozen.
 * Throws RangeError, naming the id, when an edit speaks of a part or wire that is not there or adds an id twice: the caller's bug.
 */
export function applyEdits(document: Document, edits: readonly Edit[]): Document {
  return produce(document, (draft) => {
    for (const edit of edits) applyEdit(draft, edit);
  });
}

function applyEdit(draft: Draft<Document>, edit: Edit): void {
  switch (edit.op) {
    case "add-part":
      refuseTaken(draft, edit.part.id);
      draft.parts.push(edit.part as Draft<Part>);
      return;
    case "remove-part":
      removePart(draft, edit.id);
      return;
    case "set-part":
      change(partOf(draft, edit.id), edit.change);
      return;
    case "set-props":
      change((partOf(draft, edit.id).props ??= {}), edit.change);
      return;
    case "set-cover": {
      const [id, terminal] = splitAddress(edit.terminal);
      change((partOf(draft, id).covers ??= {}), { [terminal]: edit.cover });
      return;
    }
    case "add-wire":
      refuseTaken(draft, edit.wire.id);
      draft.wires.push(edit.wire as Draft<Wire>);
      return;
    case "remove-wire":
      draft.wires.splice(draft.wires.indexOf(wireOf(draft, edit.id)), 1);
      return;
    case "set-wire":
      change(wireOf(draft, edit.id), edit.change);
      return;
    case "set-sheet":
      change((draft.sheet ??= {}), edit.change);
      return;
    case "set-system":
      change((draft.system ??= {}), edit.change);
      return;
    case "set-situations":
      draft.situations = edit.situations as Draft<Situation>[];
      return;
    case "set-notes":
      draft.notes = edit.notes as Draft<Note>[];
      return;
    case "set-records":
      change(draft, edit.change);
      return;
  }
}

/** "k1.87a" as ["k1", "87a"]. Ids hold no dot, so the first one parts them. */
export function splitAddress(address: string): [part: string, terminal: string] {
  const dot = address.indexOf(".");
  return dot < 0 ? [address, ""] : [address.slice(0, dot), address.slice(dot + 1)];
}

/** Sets the keys of `changes` on `record`; those set to `undefined` go. */
function change(record: object, changes: object): void {
  for (const [key, value] of Object.entries(changes)) {
    if (value === undefined) Reflect.deleteProperty(record, key);
    else Reflect.set(record, key, value);
  }
}

function partOf(draft: Draft<Document>, id: string): Draft<Part> {
  const part = draft.parts.find((one) => one.id === id);
  if (!part) throw new RangeError(`applyEdits: there is no part "${id}" in the document`);
  return part;
}

function wireOf(draft: Draft<Document>, id: string): Draft<Wire> {
  const wire = draft.wires.find((one) => one.id === id);
  if (!wire) throw new RangeError(`applyEdits: there is no wire "${id}" in the document`);
  return wire;
}

function removePart(draft: Draft<Document>, id: string): void {
  const touches = (address: string) => splitAddress(address)[0] === id;
  draft.parts.splice(draft.parts.indexOf(partOf(draft, id)), 1);
  draft.wires = draft.wires.filter((wire) => !touches(wire.from) && !touches(wire.to));
}

function refuseTaken(draft: Draft<Document>, id: string): void {
  if ([...draft.parts, ...draft.wires, ...(draft.notes ?? [])].some((thing) => thing.id === id)) {
    throw new RangeError(`applyEdits: the id "${id}" is already taken in the document`);
  }
}
