import { applyEdits, type Edit, type Transaction } from "./edits.ts";
import type { Document } from "./types.ts";

/** One thing a person did: what it is called and how the drawing stood on the other side of it. */
export interface Step {
  readonly label: string;
  /** Before the step in `past`, after it in `future`. */
  readonly document: Document;
  /** When it was done, milliseconds on the caller's clock. */
  readonly atMs: number;
  /** Same places moved: steps with the same key soon after one another are one step. `null`: never merged. */
  readonly mergeKey: string | null;
}

/**
 * What can be undone and redone. Documents share all that did not change, so a step costs little, and undo gives back the very
 * same document. Pan, zoom, selection, hover and analysis are no edits and so never come in here.
 */
export interface History {
  readonly present: Document;
  /** Oldest first. */
  readonly past: readonly Step[];
  /** Next to redo last. */
  readonly future: readonly Step[];
}

/** Moves of the same things less than this apart are one step. */
const MERGE_WITHIN_MS = 700;
const MOST_STEPS = 500;

/** A history that begins with `document`: nothing to undo, nothing to redo. */
export function startHistory(document: Document): History {
  return { present: document, past: [], future: [] };
}

/**
 * The history after `transaction` is done at `atMs`; what was undone before can no longer be redone. Moves of the same parts and
 * wires within 0.7 s of one another become one step. An empty transaction changes nothing and gives the same history back.
 * Throws RangeError as `applyEdits` does.
 */
export function record(history: History, transaction: Transaction, atMs: number): History {
  if (transaction.edits.length === 0) return history;
  const present = applyEdits(history.present, transaction.edits);
  const mergeKey = mergeKeyOf(transaction.edits);
  const last = history.past.at(-1);
  const merges =
    mergeKey !== null &&
    last?.mergeKey === mergeKey &&
    atMs - last.atMs < MERGE_WITHIN_MS &&
    history.future.length === 0;
  const step: Step = { label: transaction.label, document: merges ? last.document : history.present, atMs, mergeKey };
  const kept = merges ? history.past.slice(0, -1) : history.past;
  return { present, past: [...kept, step].slice(-MOST_STEPS), future: [] };
}

/** One step back; `null` when there is none. */
export function undo(history: History): History | null {
  const step = history.past.at(-1);
  if (step === undefined) return null;
  return {
    present: step.document,
    past: history.past.slice(0, -1),
    future: [...history.future, { ...step, document: history.present, mergeKey: null }],
  };
}

/** One step forward again; `null` when there is none. */
export function redo(history: History): History | null {
  const step = history.future.at(-1);
  if (step === undefined) return null;
  return {
    present: step.document,
    past: [...history.past, { ...step, document: history.present }],
    future: history.future.slice(0, -1),
  };
}

function mergeKeyOf(edits: readonly Edit[]): string | null {
  const keys: string[] = [];
  for (const edit of edits) {
    if (edit.op !== "set-part" && edit.op !== "set-wire") return null;
    const changed = Object.keys(edit.change);
    if (changed.some((key) => key !== "at" && key !== "via")) return null;
    keys.push(`${edit.op} ${edit.id}`);
  }
  return keys.toSorted().join(", ");
}
