import { ampsThrough } from "../readings/index.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { partId } from "./study/elements.ts";
import { existingOf, tappedFeeds, type TappedFeed } from "./study/feeds.ts";
import { isOver } from "./study/limits.ts";
import { amount, listOf, nameOf, placeName, situationOf } from "./study/words.ts";
import { worstOf } from "./study/worst.ts";

export const factoryFeedLoad = defineRule({
  id: "factory-feed-load",
  level: "fix",
  about:
    "More is drawn from a wire of the vehicle than its maker allows, or anything at all from one its computer watches.",
  source: "A truck maker's lighting bulletin: module-driven lamp outputs are load-monitored and harmed by extra load",
  check: (study) => tappedFeeds(study.netlist).flatMap((tap) => loaded(study, tap)),
  say(finding, study) {
    const place = placeName(finding, study);
    const { spareA, monitored } = finding.measure;
    if (typeof spareA === "number") {
      return `${place} gives ${amount(finding, "addedA", "A")} to what was added ${situationOf(finding, study)}, but may give only ${amount(finding, "spareA", "A")} more than it did.`;
    }
    const hung = listOf(study, finding.at.slice(1));
    if (monitored === "yes") {
      return `${place} is watched by the vehicle's computer, and ${hung} hangs on it: it may show a fault, switch off or be damaged.`;
    }
    return `How much may be added to ${nameOf(study, finding.at[0]!)} is not stated, and ${hung} hangs on it: enter what the vehicle's maker allows.`;
  },
});

function loaded(study: Study, { source, facts, feeds }: TappedFeed): Finding[] {
  if (feeds.length === 0) return [];
  const { spareA, monitored } = facts;
  const existing = existingOf(study.netlist, source);
  const worst = worstOf(study, ({ solution }) => {
    const ownA = existing.reduce((sum, load) => sum + ampsThrough(solution, load), 0);
    return ampsThrough(solution, source) - ownA;
  });
  const at = [partId(source), ...new Set(feeds.map(partId))];
  const measure = { addedA: worst?.value ?? null, spareA, monitored, situation: worst?.situation.id ?? null };
  if (spareA === null)
    return [{ ...(monitored === "yes" ? {} : { level: "cant-check" }), at, measure, remedies: [steady] }];
  return worst && isOver(worst.value, spareA) ? [{ at, measure, remedies: [steady] }] : [];
}

const steady = {
  id: "other-signal",
  text: "Take power from the battery through a fuse and a relay, and trigger it from an outlet the vehicle's maker provides",
  edits: [],
};
