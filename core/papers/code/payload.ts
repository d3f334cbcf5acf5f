import { deflateSync, inflateSync, strToU8 } from "fflate";
import type { Document } from "../../document/index.ts";
import { readCircuitFile, type ReadResult } from "../../file/index.ts";
import { fromBase43, toBase43 } from "./base43.ts";
import { CODE_WORDS } from "./code-words.ts";

const MARK = "GS1:";
/** Longer than any one code that can be printed holds, and short enough that unpacking can't fill the memory. */
const LONGEST = 20_000;
const CHECK_BYTES = 4;

/**
 * A whole circuit as one short line of text, to be printed as a code to scan or put behind the # of the app's own address: "GS1:",
 * then the circuit file without spaces, packed, with a checksum behind it. Readings taken and revisions built before stay out: they
 * are the job's history, and would leave the circuit itself no room.
 */
export function circuitPayload(document: Document): string {
  const { readings: _readings, revisions: _revisions, ...circuit } = document;
  const plain = strToU8(JSON.stringify(circuit));
  const packed = deflateSync(plain, { level: 9, mem: 9, dictionary: strToU8(CODE_WORDS) });
  const bytes = new Uint8Array(packed.length + CHECK_BYTES);
  bytes.set(packed);
  bytes.set(checksum(plain), packed.length);
  return MARK + toBase43(bytes);
}

/** Whether a payload of ours stands somewhere in the text. */
export function holdsPayload(text: string): boolean {
  return text.includes(MARK);
}

/**
 * The circuit of a payload found anywhere in `text`: scanned, pasted, a link. Checked like any file; a text that is damaged, cut
 * short or none of ours gives the reason. Never throws.
 */
export function circuitInPayload(text: string): ReadResult {
  const start = text.indexOf(MARK);
  if (start < 0) return refusal(`no code of ours in it; wanted text that holds "${MARK}"`);
  const payload = /^[0-9A-Z$*+\-./:]*/.exec(text.slice(start + MARK.length))![0];
  if (payload.length > LONGEST) return refusal(`${payload.length} characters; the most is ${LONGEST}`);
  const bytes = fromBase43(payload);
  const plain = bytes === null ? null : unpacked(bytes);
  if (plain === null) return refusal("the code is damaged or cut short; scan or copy all of it once more");
  return readCircuitFile(plain);
}

function unpacked(bytes: Uint8Array): Uint8Array | null {
  const end = bytes.length - CHECK_BYTES;
  if (end <= 0) return null;
  try {
    const plain = inflateSync(bytes.subarray(0, end), { dictionary: strToU8(CODE_WORDS) });
    return checksum(plain).every((byte, at) => byte === bytes[end + at]) ? plain : null;
  } catch {
    return null;
  }
}

/** Adler-32, RFC 1950, first byte first. */
function checksum(bytes: Uint8Array): Uint8Array {
  let [a, b] = [1, 0];
  for (const byte of bytes) {
    a = (a + byte) % 65521;
    b = (b + a) % 65521;
  }
  return Uint8Array.of(b >> 8, b & 0xff, a >> 8, a & 0xff);
}

function refusal(error: string): ReadResult {
  return { ok: false, error };
}
