import type { Document } from "../../core/document/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";
import type { KeyValue } from "./key-value.ts";

/** A drawing as this browser keeps it: the text of its circuit file and what the list of drawings shows. */
interface KeptDrawing {
  readonly id: string;
  readonly title: string;
  readonly partCount: number;
  readonly text: string;
  /** Counts the times it was kept; tells two tabs apart. */
  readonly save: number;
  readonly savedAtMs: number;
  readonly openedAtMs: number;
  /** `save` at the last time it went to a file; `null`: never. */
  readonly fileSave: number | null;
  readonly deletedAtMs: number | null;
}

export type DrawingEntry = Omit<KeptDrawing, "text">;

export type KeepOutcome =
  | { readonly status: "kept"; readonly save: number; readonly atMs: number }
  /** Another tab kept a later one meanwhile; nothing was written. */
  | { readonly status: "conflict" }
  | { readonly status: "refused"; readonly reason: string };

export type OpenOutcome = { readonly document: Document; readonly entry: DrawingEntry } | { readonly error: string };

/** How long a deleted drawing can be brought back. */
const FORGET_AFTER_MS = 30 * 24 * 3600 * 1000;
const UNTITLED = "Untitled drawing";

/** What a drawing is called in lists and file names. */
export function titleOf(document: Document): string {
  return document.sheet?.title?.trim() || UNTITLED;
}

/** The drawings kept in this browser. `now` gives milliseconds. */
export class DrawingShelf {
  readonly #kept: KeyValue;
  readonly #now: () => number;

  constructor(kept: KeyValue, now: () => number) {
    this.#kept = kept;
    this.#now = now;
  }

  /** Newest opened first; deleted ones left out unless asked for. */
  async list({ deleted = false } = {}): Promise<readonly DrawingEntry[]> {
    const all = (await this.#kept.all()).map(([, value]) => value).filter(isKeptDrawing);
    return all
      .filter((drawing) => (drawing.deletedAtMs !== null) === deleted)
      .map(entryOf)
      .toSorted((a, b) => b.openedAtMs - a.openedAtMs);
  }

  async open(id: string): Promise<OpenOutcome> {
    const kept = await this.#kept.read(keyOf(id));
    if (!isKeptDrawing(kept)) return { error: "This drawing is not kept in this browser any more." };
    const read = readCircuitFile(kept.text);
    if ("error" in read) return { error: `"${kept.title}" can't be opened: ${read.error}` };
    await this.#change(id, (drawing) => ({ ...drawing, openedAtMs: this.#now(), deletedAtMs: null }));
    return { document: read.document, entry: entryOf(kept) };
  }

  /** The stored text as it is, for saving a drawing that can't be opened here. */
  async textOf(id: string): Promise<string | null> {
    const kept = await this.#kept.read(keyOf(id));
    return isKeptDrawing(kept) ? kept.text : null;
  }

  /** Writes the drawing unless another tab wrote since save number `expected` (0: a new drawing). */
  async keep(id: string, document: Document, expected: number): Promise<KeepOutcome> {
    const atMs = this.#now();
    const text = writeCircuitFile(document);
    try {
      await this.#kept.update(keyOf(id), (old) => {
        const before = isKeptDrawing(old) ? old : null;
        if ((before?.save ?? 0) !== expected) throw new LaterSave();
        return {
          id,
          title: titleOf(document),
          partCount: document.parts.length,
          text,
          save: expected + 1,
          savedAtMs: atMs,
          openedAtMs: before?.openedAtMs ?? atMs,
          fileSave: before?.fileSave ?? null,
          deletedAtMs: null,
        } satisfies KeptDrawing;
      });
    } catch (error) {
      return error instanceof LaterSave ? { status: "conflict" } : { status: "refused", reason: whyRefused(error) };
    }
    return { status: "kept", save: expected + 1, atMs };
  }

  /** Gives a closed drawing another title. */
  async rename(id: string, title: string): Promise<string | null> {
    const opened = await this.open(id);
    if ("error" in opened) return opened.error;
    const outcome = await this.keep(
      id,
      { ...opened.document, sheet: { ...opened.document.sheet, title } },
      opened.entry.save,
    );
    if (outcome.status === "kept") return null;
    return outcome.status === "conflict" ? "Another tab changed this drawing meanwhile; try again." : outcome.reason;
  }

  markSavedToFile(id: string, save: number): Promise<void> {
    return this.#change(id, (drawing) => ({ ...drawing, fileSave: save }));
  }

  /** Can be taken back with `restore` for 30 days. */
  remove(id: string): Promise<void> {
    return this.#change(id, (drawing) => ({ ...drawing, deletedAtMs: this.#now() }));
  }

  restore(id: string): Promise<void> {
    return this.#change(id, (drawing) => ({ ...drawing, deletedAtMs: null }));
  }

  /** Lets go of what was deleted more than 30 days ago. */
  async tidy(): Promise<void> {
    const gone = (await this.list({ deleted: true })).filter(
      (drawing) => this.#now() - drawing.deletedAtMs! > FORGET_AFTER_MS,
    );
    await Promise.all(gone.map((drawing) => this.#kept.remove(keyOf(drawing.id))));
  }

  async #change(id: string, change: (drawing: KeptDrawing) => KeptDrawing): Promise<void> {
    await this.#kept.update(keyOf(id), (old) => (isKeptDrawing(old) ? change(old) : old));
  }
}

/** Thrown inside an update so that the database leaves the later save alone. */
class LaterSave extends Error {}

function keyOf(id: string): string {
  return `drawing ${id}`;
}

function entryOf({ text: _text, ...entry }: KeptDrawing): DrawingEntry {
  return entry;
}

function isKeptDrawing(value: unknown): value is KeptDrawing {
  return typeof value === "object" && value !== null && "text" in value && "save" in value;
}

function whyRefused(error: unknown): string {
  const name = error instanceof Error ? error.name : "";
  if (name === "QuotaExceededError") return "The browser has no room left.";
  return "The browser refuses to keep anything on this page.";
}
