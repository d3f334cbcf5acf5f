import type { Document } from "../../core/document/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";
import { isOwn, letterOf } from "./own-kind.ts";
import { partOf, symbolOf, type BenchSymbol } from "./symbol.ts";

/** A circuit file that holds nothing but the symbol: opens as a drawing, too. */
export function symbolText(symbol: BenchSymbol): string {
  return writeCircuitFile(fileOf(symbol));
}

/** Why no file could hold the symbol, as the reader of files says it; `null` when it can. */
export function whyNoFile(symbol: BenchSymbol): string | null {
  const read = readCircuitFile(JSON.stringify(fileOf(symbol)));
  return read.ok ? null : read.error.replace("parts[0].props.", "");
}

/** Every own symbol in a circuit file, each once however often it was placed. */
export function symbolsIn(document: Document): readonly BenchSymbol[] {
  const found = new Map(document.parts.filter(isOwn).map((part) => [JSON.stringify(part.props ?? {}), part]));
  return [...found.values()].map(symbolOf);
}

/** As `symbolsIn`, from text. */
export function symbolsInText(text: string): readonly BenchSymbol[] | { readonly error: string } {
  const read = readCircuitFile(text);
  return read.ok ? symbolsIn(read.document) : { error: read.error };
}

function fileOf(symbol: BenchSymbol): Document {
  const part = partOf(symbol, "own");
  const id = `${letterOf(part)}1`;
  return {
    format: "groundstrap",
    version: 1,
    ...(symbol.name && { sheet: { title: symbol.name } }),
    parts: [{ ...part, id, at: [0, 0] }],
    wires: [],
  };
}
