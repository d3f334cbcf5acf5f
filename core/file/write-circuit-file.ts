import type { Document } from "../document/index.ts";

/** The text of a circuit file, two-space JSON for people to read and compare; everything the document holds, unknown keys too. */
export function writeCircuitFile(document: Document): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}
