import {
  splitAddress,
  type Document,
  type Edit,
  type GridPoint,
  type Note,
  type Part,
  type Wire,
} from "../../core/document/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";
import { letterOf } from "../bench/own-kind.ts";
import { documentOf, type EditorState } from "../store/editor-state.ts";
import { idSource } from "../store/ids.ts";
import type { Plan } from "./command.ts";

/** How far from the copied place a paste lands, grid steps. */
const PASTE_SHIFT = 2;

/** Parts with the wires that run between them, and notes. */
export interface Pieces {
  readonly parts: readonly Part[];
  readonly wires: readonly Wire[];
  readonly notes?: readonly Note[];
}

/** The selected parts and notes, and the wires between the parts whether selected or not. */
export function piecesOf(document: Document, ids: ReadonlySet<string>): Pieces {
  const parts = document.parts.filter((part) => ids.has(part.id));
  const taken = new Set(parts.map((part) => part.id));
  const inside = (address: string) => taken.has(splitAddress(address)[0]);
  const notes = document.notes?.filter((note) => ids.has(note.id)) ?? [];
  const wires = document.wires.filter((wire) => inside(wire.from) && inside(wire.to));
  return { parts, wires, ...(notes.length > 0 && { notes }) };
}

/** What goes to the clipboard: a small circuit file, so that it can be pasted into another drawing or a text editor. */
export function copyText(document: Document, ids: ReadonlySet<string>): string {
  return writeCircuitFile({ format: "groundstrap", version: 1, ...piecesOf(document, ids) });
}

/** Reads the clipboard as a circuit file. */
function readPieces(text: string): Pieces | { readonly error: string } {
  const read = readCircuitFile(text);
  return "error" in read ? { error: `The clipboard holds no parts: ${read.error}` } : read.document;
}

/** Edits that add the pieces under new ids, moved by `shift` grid steps; `ids` are those of the new parts and notes. */
export function pasteOf(
  document: Document,
  pieces: Pieces,
  shift: GridPoint,
): { readonly edits: readonly Edit[]; readonly ids: readonly string[] } {
  const fresh = idSource(document);
  const renamed = new Map<string, string>();
  const move = (at: GridPoint): GridPoint => [at[0] + shift[0], at[1] + shift[1]];
  const parts = pieces.parts.map((part): Edit => {
    const id = fresh(letterOf(part));
    renamed.set(part.id, id);
    return { op: "add-part", part: { ...part, id, ...(part.at && { at: move(part.at) }) } };
  });
  const address = (old: string) => {
    const [part, terminal] = splitAddress(old);
    return `${renamed.get(part)!}.${terminal}`;
  };
  const wires = pieces.wires.map((wire): Edit => ({
    op: "add-wire",
    wire: {
      ...wire,
      id: fresh("w"),
      from: address(wire.from),
      to: address(wire.to),
      ...(wire.via && { via: wire.via.map(move) }),
    },
  }));
  const notes = pieces.notes?.map((note) => ({ ...note, id: fresh("n"), at: move(note.at) })) ?? [];
  const set = { op: "set-notes", notes: [...(document.notes ?? []), ...notes] } as const;
  return {
    edits: [...parts, ...wires, ...(notes.length > 0 ? [set] : [])],
    ids: [...renamed.values(), ...notes.map((note) => note.id)],
  };
}

/** Adds what the clipboard holds. */
export function pastePlan(state: EditorState, text: string): Plan {
  if (text.trim() === "") return { reason: "The clipboard holds no text" };
  const pieces = readPieces(text);
  if ("error" in pieces) return { reason: pieces.error };
  const count = pieces.parts.length + (pieces.notes?.length ?? 0);
  if (count === 0) return { reason: "The clipboard holds no parts" };
  const pasted = pasteOf(documentOf(state), pieces, [PASTE_SHIFT, PASTE_SHIFT]);
  const label = `Paste ${count === 1 ? "one thing" : `${count} things`}`;
  return { transaction: { label, edits: pasted.edits }, select: pasted.ids };
}
