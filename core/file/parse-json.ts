import { quote, refuse, step } from "./refusal.ts";

const MOST_BYTES = 5_000_000;
const MOST_STRING = 10_000;
const MOST_DEPTH = 64;
/** Names that would reach into JavaScript's own objects. As keys nobody knows they are dropped, as ids refused. */
export const FORBIDDEN_NAMES: ReadonlySet<string> = new Set(["__proto__", "prototype", "constructor"]);

/** The one global of the platform used here: there in browsers and in Node alike. */
declare const TextDecoder: new (label: string, options: { fatal: boolean }) => { decode(bytes: Uint8Array): string };

/** The JSON value of a file's bytes or text. Throws Refusal when it is too large, not UTF-8, not JSON, or holds what no circuit file may. */
export function parseJson(input: string | Uint8Array): unknown {
  if (input.length > MOST_BYTES) throw refuse("", `${(input.length / 1e6).toFixed(1)} MB`, "at most 5 MB");
  const text = (typeof input === "string" ? input : decode(input)).replace(/^\uFEFF/, "");
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw refuse(
      "",
      text.trim() === "" ? "an empty file" : `text that is not JSON (${quote(text.trim().slice(0, 40))})`,
      "a circuit file (JSON)",
    );
  }
  return clean(value);
}

function decode(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw refuse("", "bytes that are not UTF-8 text", "a circuit file (UTF-8 JSON)");
  }
}

interface Visit {
  readonly value: unknown;
  readonly key: string;
  readonly depth: number;
}

/** Checks every string and number, and drops forbidden keys. Walks with a list of its own, so that deep nesting can't overflow. */
function clean(root: unknown): unknown {
  const open: Visit[] = [{ value: root, key: "", depth: 0 }];
  for (let visit = open.pop(); visit; visit = open.pop()) {
    const { value, key, depth } = visit;
    if (depth > MOST_DEPTH) throw refuse(key, `nesting over ${MOST_DEPTH} levels deep`, "a flatter file");
    if (typeof value === "string" && value.length > MOST_STRING) {
      throw refuse(key, `text of ${value.length} characters`, "at most 10 000 characters");
    }
    if (typeof value === "number" && !Number.isFinite(value))
      throw refuse(key, "a number that is not finite", "a finite number");
    if (Array.isArray(value)) {
      value.forEach((item, at) => open.push({ value: item, key: `${key}[${at}]`, depth: depth + 1 }));
    } else if (typeof value === "object" && value !== null) {
      for (const [name, item] of Object.entries(value)) {
        if (FORBIDDEN_NAMES.has(name)) delete (value as Record<string, unknown>)[name];
        else open.push({ value: item, key: key === "" ? step(name) : `${key}.${step(name)}`, depth: depth + 1 });
      }
    }
  }
  return root;
}
