import { fuseFar } from "./fuse-far.ts";
import { fuseOverWire } from "./fuse-over-wire.ts";
import { hotBare } from "./hot-bare.ts";
import { noFuse } from "./no-fuse.ts";
import type { Level, Rule, Snag, Study } from "./rule.ts";
import { wireOverload } from "./wire-overload.ts";

export * from "./rule.ts";

export const rules: readonly Rule[] = [noFuse, fuseFar, fuseOverWire, hotBare, wireOverload];

const WORST_FIRST: readonly Level[] = ["stop", "fix", "cant-check", "advice"];

/** Everything wrong with a drawing, worst first; of one level in the order of the rules, then of the drawing. */
export function applyRules(study: Study): Snag[] {
  const snags = rules.flatMap((rule) =>
    rule.check(study).map((finding): Snag => ({
      rule: rule.id,
      level: finding.level ?? rule.level,
      at: finding.at,
      measure: finding.measure,
      text: rule.say(finding, study),
      remedies: finding.remedies,
    })),
  );
  return snags.toSorted((one, other) => WORST_FIRST.indexOf(one.level) - WORST_FIRST.indexOf(other.level));
}
