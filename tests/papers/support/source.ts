import type { Document } from "../../../core/document/index.ts";
import { buildNetlist } from "../../../core/netlist/index.ts";
import type { PaperOptions, PaperSource } from "../../../core/papers/index.ts";
import { standingOf } from "../../../core/positions/index.ts";
import { readSituations } from "../../../core/readings/index.ts";
import { buildReport } from "../../../core/report/index.ts";
import type { Snag } from "../../../core/rules/index.ts";

/** What a paper is made from, solved, with these snags in place of what the rules would find. */
export function sourceOf(document: Document, snags: readonly Snag[] = []): PaperSource {
  const netlist = buildNetlist(document);
  return { document, netlist, report: buildReport(netlist, readSituations(netlist), standingOf(netlist), snags) };
}

export const a5: PaperOptions = { size: "A5", landscape: true, words: "ground" };
export const a5Size = { widthMm: 210, heightMm: 148 };
