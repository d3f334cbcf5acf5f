import type { BuiltRevision, Document } from "../document/index.ts";
import { readCircuitFile, type ReadResult } from "../file/index.ts";

/** The drawing of a revision on record, read like any file. */
export function drawingOfRevision({ circuit }: BuiltRevision): ReadResult {
  return readCircuitFile(JSON.stringify(circuit));
}

/**
 * The drawing as it was built before the revision it is now; where only this one is on record, as it was built then. `null`: nothing
 * is on record, or the record can't be read.
 */
export function builtBefore({ sheet, revisions = [] }: Document): Document | null {
  const now = sheet?.revision ?? "";
  const last = revisions.findLast(({ revision }) => revision !== now) ?? revisions.at(-1);
  const read = last && drawingOfRevision(last);
  return read?.ok ? read.document : null;
}

/**
 * The revisions on record with the drawing as it stands now put last, as built on `date`. What stood under the same revision is
 * replaced. Readings and revisions are no part of what is recorded.
 */
export function withBuilt(document: Document, date: string): readonly BuiltRevision[] {
  const { readings: _readings, revisions = [], ...circuit } = document;
  const revision = document.sheet?.revision ?? "";
  return [...revisions.filter((one) => one.revision !== revision), { revision, date, circuit }];
}
