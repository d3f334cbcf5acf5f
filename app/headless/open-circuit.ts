import type { Document } from "../../core/document/index.ts";
import { readCircuitFile } from "../../core/file/index.ts";
import { circuitInPdf, circuitInSvg } from "../../core/papers/index.ts";
import type { Io } from "./io.ts";

/** Exit of a command whose file or words can't be used. */
export const UNUSABLE = 2;

const PERCENT_SIGN = 0x25;
const LESS_THAN_SIGN = 0x3c;

/** The circuit in a file (or in a paper of ours, SVG or PDF, that carries one), or null after one line on stderr that says why it can't be used. */
export async function openCircuit(path: string, io: Io): Promise<Document | null> {
  let bytes: Uint8Array;
  try {
    bytes = await io.read(path);
  } catch (error) {
    io.err(`${path.slice(0, 200)}: can't be read (${(error as { code?: string }).code ?? "unknown reason"})\n`);
    return null;
  }
  const carried =
    bytes[0] === LESS_THAN_SIGN
      ? circuitInSvg(new TextDecoder().decode(bytes))
      : bytes[0] === PERCENT_SIGN
        ? circuitInPdf(bytes)
        : null;
  const result = readCircuitFile(carried ?? bytes);
  if (result.ok) return result.document;
  io.err(`${result.error}\n`);
  return null;
}
