import type { Analysis } from "../analyse.ts";
import type { Snag } from "../rules/index.ts";

/** Rules that the choice of a wire, device, contact or barrel can put right. */
const SIZING_RULES: ReadonlySet<string> = new Set([
  "fuse-over-wire",
  "wire-overload",
  "fuse-loaded",
  "fuse-blows",
  "under-rated",
  "contact-overload",
  "weak-fault",
  "drop-high",
  "ground-drop",
  "return-small",
  "start-surge",
  "block-sum",
  "wrong-voltage",
  "barrel-misfit",
]);

/** Snags of the drawing that sizing is there to clear; those that can't be checked are questions, not sizes. */
export function sizingSnags({ report }: Analysis): Snag[] {
  return report.snags.filter(({ rule, level }) => SIZING_RULES.has(rule) && level !== "cant-check");
}

/** The same snag before and after a change, whatever its numbers. */
export function snagKey({ rule, at }: Snag): string {
  return `${rule} ${at[0] ?? ""}`;
}
