import type { Document } from "../document/index.ts";
import { writeCircuitFile } from "../file/index.ts";

const NAMESPACE = "urn:groundstrap:circuit:1";
/** A circuit file holds at most 5 MB; written in plain ASCII a character of it may take ten. */
const MOST_CHARACTERS = 50_000_000;
/** A card of ours holds one such element; a file with many more means harm. */
const MOST_TRIES = 64;

/**
 * The circuit as an SVG `metadata` element whose text is exactly the circuit file, to be read with the eye or by any XML
 * reader. It is written in plain ASCII, so that no viewer's idea of the encoding can harm it.
 */
export function circuitMetadata(document: Document): string {
  const text = writeCircuitFile(document)
    .replace(/[\ufffe\uffff]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16)}`)
    .replace(/[&<>]|[^\n\u0020-\u007e]/gu, (character) => `&#${character.codePointAt(0)};`);
  return `<metadata><gs:circuit xmlns:gs="${NAMESPACE}" type="application/json">${text}</gs:circuit></metadata>`;
}

/**
 * The text of the circuit file that a vehicle card carries, exactly as it was put in; also after another program rewrote the
 * SVG with a prefix or escapes of its own.
 * No answer: `null` for an SVG that carries none of ours, and for anything that is no JSON object. Never throws. The text is
 * foreign: read it like any file.
 */
export function circuitInSvg(svg: string): string | null {
  if (!svg.includes(NAMESPACE)) return null;
  let tries = 0;
  for (let at = svg.indexOf("circuit"); at >= 0 && tries < MOST_TRIES; at = svg.indexOf("circuit", at + 7)) {
    if (!/<(?:[\w.-]{1,64}:)?$/.test(svg.slice(Math.max(0, at - 66), at))) continue;
    tries++;
    const start = svg.indexOf(">", at) + 1;
    const end = svg.indexOf("<", start);
    if (start === 0 || end < 0) return null;
    if (end - start > MOST_CHARACTERS) continue;
    const text = withoutEntities(svg.slice(start, end));
    if (isJsonObject(text)) return text;
  }
  return null;
}

const NAMED: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

function withoutEntities(text: string): string {
  return text.replace(
    /&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|(amp|lt|gt|quot|apos));/gi,
    (whole, decimal?: string, hex?: string, name?: string) => {
      if (name !== undefined) return NAMED[name] ?? whole;
      const code = decimal === undefined ? Number.parseInt(hex ?? "", 16) : Number(decimal);
      return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
    },
  );
}

/** Whether it is JSON of an object, whatever it holds. */
export function isJsonObject(text: string): boolean {
  if (!/^\s*\{/.test(text)) return false;
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
