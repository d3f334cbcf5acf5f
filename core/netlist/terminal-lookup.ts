import type { Document } from "../document/index.ts";
import { kindOf, settingsOf, terminalsOf, type PartKind, type Terminal } from "../parts/index.ts";

/** A part of the document with its kind and settings looked up, before anything electrical is known. */
export interface KnownPart {
  readonly part: Document["parts"][number];
  readonly kind: PartKind;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly terminals: readonly Terminal[];
}

/**
 * Each part with its kind. Throws RangeError for a kind nobody knows: a document comes through `readCircuitFile`, which refuses
 * such a file, so this is the caller's bug.
 */
export function knownParts(document: Document): KnownPart[] {
  return document.parts.map((part) => {
    const kind = kindOf(part.kind);
    if (!kind) throw new RangeError(`buildNetlist: part "${part.id}" has kind "${part.kind}", which is not registered`);
    return { part, kind, settings: settingsOf(part), terminals: terminalsOf(part) };
  });
}
