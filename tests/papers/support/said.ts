import type { Paper, PaperSource } from "../../../core/papers/index.ts";
import { textsOf } from "./sheet-checks.ts";
import { a5 } from "./source.ts";

/** Everything a paper says, one piece of lettering a line, in the order it is set. */
export function said(paper: Paper, source: PaperSource, options = a5): string {
  return paper
    .pages(source, options)
    .flatMap(textsOf)
    .map(({ text }) => text)
    .join("\n");
}
