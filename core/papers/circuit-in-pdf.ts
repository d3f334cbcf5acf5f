import type { Document } from "../document/index.ts";
import { writeCircuitFile } from "../file/index.ts";
import { isJsonObject } from "./circuit-in-svg.ts";

/** A PDF of ours attaches one file; one with many more means harm. */
const MOST_TRIES = 64;
/** Between the words of the attachment and its first byte. */
const LONGEST_DICTIONARY = 400;

/**
 * The circuit file as the text of a PDF attachment: still JSON, in plain ASCII so that one character is one byte, and without the
 * word that ends a stream, which a careless reader would stop at.
 */
export function circuitForPdf(document: Document): string {
  return writeCircuitFile(document)
    .replace(/[^\n\u0020-\u007e]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, "0")}`)
    .replaceAll("endstream", "\\u0065ndstream");
}

/**
 * The text of the circuit file attached to a PDF of ours, found without a PDF library: it lies in the file as it is.
 * No answer: `null` for a PDF that carries none, or whose attachments another program packed anew. Never throws. The text is
 * foreign: read it like any file.
 */
export function circuitInPdf(bytes: Uint8Array): string | null {
  const file = latin1(bytes);
  let tries = 0;
  for (
    let at = file.indexOf("/EmbeddedFile");
    at >= 0 && tries < MOST_TRIES;
    at = file.indexOf("/EmbeddedFile", at + 1)
  ) {
    tries++;
    const match = /\/Length (\d{1,8})\b[^]*?\bstream\r?\n/.exec(file.slice(at, at + LONGEST_DICTIONARY));
    if (match === null) continue;
    const start = at + match.index + match[0].length;
    const text = file.slice(start, start + Number(match[1]));
    if (isJsonObject(text)) return text;
  }
  return null;
}

function latin1(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += 8192) pieces.push(String.fromCharCode(...bytes.subarray(at, at + 8192)));
  return pieces.join("");
}
