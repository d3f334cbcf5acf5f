import { analyse } from "../../core/analyse.ts";
import type { Document } from "../../core/document/index.ts";
import type { Snag } from "../../core/rules/index.ts";

/** What the rules say of a drawing: all of it, or what one rule says. */
export function snagsOf(document: Document, rule?: string): readonly Snag[] {
  const { snags } = analyse(document).report;
  return rule === undefined ? snags : snags.filter((snag) => snag.rule === rule);
}

/** Where one rule finds something, the first place of each finding. */
export function placesOf(document: Document, rule: string): readonly string[] {
  return snagsOf(document, rule).map(({ at }) => at[0] ?? "");
}
