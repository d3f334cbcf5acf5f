import type { Document } from "../document/index.ts";
import { placeMissing } from "../placing/index.ts";
import { checkParts } from "./check-parts.ts";
import { checkReferences } from "./check-references.ts";
import { circuitSchema } from "./circuit-schema.ts";
import { issueInWords } from "./issue-in-words.ts";
import { CURRENT_VERSION, migrate } from "./migrations/index.ts";
import { parseJson } from "./parse-json.ts";
import { quote, Refusal, refuse } from "./refusal.ts";

export type ReadResult =
  | { readonly ok: true; readonly document: Document }
  /** One line: which key, what was got, what was wanted. */
  | { readonly ok: false; readonly error: string };

/**
 * Opens a circuit file: every limit checked, keys nobody knows kept, parts without a place put somewhere sensible. Never throws
 * and never half opens: either a whole valid document or the reason why not.
 */
export function readCircuitFile(input: string | Uint8Array): ReadResult {
  try {
    return { ok: true, document: placeMissing(checked(parseJson(input))) };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, error: error.message };
    throw error;
  }
}

function checked(value: unknown): Document {
  if (typeof value !== "object" || value === null || Array.isArray(value)) throw refuse("", quote(value), "an object");
  const file = value as Record<string, unknown>;
  if (file["format"] !== "groundstrap") throw refuse("format", quote(file["format"]), '"groundstrap"');
  const version = file["version"];
  if (typeof version === "number" && version > CURRENT_VERSION) {
    throw refuse(
      "version",
      String(version),
      `${CURRENT_VERSION} or older: this file was written by a newer Groundstrap`,
    );
  }
  const migrated = withTurnsInDegrees(migrate(file));
  const result = circuitSchema.safeParse(migrated);
  if (!result.success) throw issueInWords(result.error.issues, migrated);
  // Not what the check made of it, which has its own order of keys: a file saved again should differ only where it was changed.
  const document = migrated as unknown as Document;
  checkParts(document.parts);
  checkReferences(document);
  return document;
}

/** Written by hand, `turn` is as likely 1 as 90: quarter turns become degrees. */
function withTurnsInDegrees(file: Record<string, unknown>): Record<string, unknown> {
  if (!Array.isArray(file["parts"])) return file;
  const parts = file["parts"].map((part: unknown) => {
    const turn = (part as { turn?: unknown } | null)?.turn;
    return turn === 1 || turn === 2 || turn === 3 ? { ...(part as object), turn: turn * 90 } : part;
  });
  return { ...file, parts };
}
