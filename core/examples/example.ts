import { applyEdits, type Document, type Edit } from "../document/index.ts";

/** A demo circuit: an invented job with its own traps, or its put-right twin. */
export interface Example {
  /** As in `?example=`: the file's name, the twin's with "-put-right". */
  readonly name: string;
  readonly title: string;
  /** What there is to find, or what was done about it; one sentence. */
  readonly about: string;
  readonly document: Document;
}

/** The same drawing put right: what a person would have changed, told as edits. */
export function putRight(example: Example, about: string, edits: readonly Edit[]): Example {
  const title = `${example.title}, put right`;
  const document = applyEdits(example.document, [...edits, { op: "set-sheet", change: { title, revision: "B" } }]);
  return { name: `${example.name}-put-right`, title, about, document };
}
