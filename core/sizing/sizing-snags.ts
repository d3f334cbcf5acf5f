import { applyRules, rules, type Snag, type Study } from "../rules/index.ts";

/** Rules that the choice of a wire, device, contact or barrel can put right. */
const SIZING_IDS: ReadonlySet<string> = new Set([
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

const SIZING_RULES = rules.filter(({ id }) => SIZING_IDS.has(id));

/** Snags of the drawing that sizing is there to clear; those that can't be checked are questions, not sizes. */
export function sizingSnags(study: Study): Snag[] {
  return applyRules(study, SIZING_RULES).filter(({ level }) => level !== "cant-check");
}

/** The same snag before and after a change, whatever its numbers. */
export function snagKey({ rule, at }: Snag): string {
  return `${rule} ${at[0] ?? ""}`;
}
