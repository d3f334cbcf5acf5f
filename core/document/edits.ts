import type { Cover, Document, GridPoint, Part, Sheet, Situation, SystemSettings, Wire } from "./types.ts";

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
  | { readonly op: "set-situations"; readonly situations: readonly Situation[] };

/** All of a part but its id, its settings and its covers, which have edits of their own. */
export type PartChange = Partial<Omit<Part, "id" | "props" | "covers" | "label">> & {
  readonly label?: string | undefined;
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
 * The document with all edits applied in order; the input is untouched and unchanged pieces are shared.
 * Throws RangeError, naming the id, when an edit speaks of a part or wire that is not there or adds an id twice: the caller's bug.
 */
export function applyEdits(document: Document, edits: readonly Edit[]): Document {
  return edits.reduce(applyEdit, document);
}

function applyEdit(document: Document, edit: Edit): Document {
  switch (edit.op) {
    case "add-part":
      refuseTaken(document, edit.part.id);
      return { ...document, parts: [...document.parts, edit.part] };
    case "remove-part":
      return removePart(document, edit.id);
    case "set-part":
      return changePart(document, edit.id, (part) => changed(part, edit.change));
    case "set-props":
      return changePart(document, edit.id, (part) => ({ ...part, props: changed(part.props ?? {}, edit.change) }));
    case "set-cover": {
      const [id, terminal] = splitAddress(edit.terminal);
      return changePart(document, id, (part) => ({
        ...part,
        covers: changed(part.covers ?? {}, { [terminal]: edit.cover }),
      }));
    }
    case "add-wire":
      refuseTaken(document, edit.wire.id);
      return { ...document, wires: [...document.wires, edit.wire] };
    case "remove-wire":
      wireIndex(document, edit.id);
      return { ...document, wires: document.wires.filter((wire) => wire.id !== edit.id) };
    case "set-wire": {
      const at = wireIndex(document, edit.id);
      const wires = [...document.wires];
      wires[at] = changed(wires[at]!, edit.change);
      return { ...document, wires };
    }
    case "set-sheet":
      return { ...document, sheet: changed(document.sheet ?? {}, edit.change) };
    case "set-system":
      return { ...document, system: changed(document.system ?? {}, edit.change) };
    case "set-situations":
      return { ...document, situations: edit.situations };
  }
}

/** "k1.87a" as ["k1", "87a"]. Ids hold no dot, so the first one parts them. */
export function splitAddress(address: string): [part: string, terminal: string] {
  const dot = address.indexOf(".");
  return dot < 0 ? [address, ""] : [address.slice(0, dot), address.slice(dot + 1)];
}

function changed<T extends object>(record: T, change: { readonly [K in keyof T]?: T[K] | undefined }): T {
  const next: T = { ...record, ...change };
  for (const key of Object.keys(change) as (keyof T)[]) if (change[key] === undefined) delete next[key];
  return next;
}

function changePart(document: Document, id: string, change: (part: Part) => Part): Document {
  const at = document.parts.findIndex((part) => part.id === id);
  if (at < 0) throw new RangeError(`applyEdits: there is no part "${id}" in the document`);
  const parts = [...document.parts];
  parts[at] = change(parts[at]!);
  return { ...document, parts };
}

function removePart(document: Document, id: string): Document {
  if (!document.parts.some((part) => part.id === id))
    throw new RangeError(`applyEdits: there is no part "${id}" in the document`);
  const touches = (address: string) => splitAddress(address)[0] === id;
  return {
    ...document,
    parts: document.parts.filter((part) => part.id !== id),
    wires: document.wires.filter((wire) => !touches(wire.from) && !touches(wire.to)),
  };
}

function wireIndex(document: Document, id: string): number {
  const at = document.wires.findIndex((wire) => wire.id === id);
  if (at < 0) throw new RangeError(`applyEdits: there is no wire "${id}" in the document`);
  return at;
}

function refuseTaken(document: Document, id: string): void {
  if (document.parts.some((part) => part.id === id) || document.wires.some((wire) => wire.id === id)) {
    throw new RangeError(`applyEdits: the id "${id}" is already taken in the document`);
  }
}
