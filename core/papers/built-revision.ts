import type { BuiltRevision, Document } from "../document/index.ts";
import { readCircuitFile, type ReadResult } from "../file/index.ts";

/** The drawing of a revision on record, read like any file. */
export function drawingOfRevision({ circuit }: BuiltRevision): ReadResult {
  return readCircuitFile(JSON.stringify(circuit));
}

/** The drawing as it was last built; `null`: none is on record, or the record can't be read. */
export function builtBefore({ revisions = [] }: Document): Document | null {
  const last = revisions.at(-1);
  const read = last && drawingOfRevision(last);
  return read?.ok ? read.document : null;
}

/**
 * The record of the drawing as built now, to follow those already there. What stood under the same revision is replaced. Readings
 * and the revisions before stay out of it.
 */
export function withBuilt(document: Document, date: string): readonly BuiltRevision[] {
  const { readings: _readings, revisions = [], ...circuit } = document;
  const revision = document.sheet?.revision ?? "";
  return [...revisions.filter((one) => one.revision !== revision), { revision, date, circuit }];
}
