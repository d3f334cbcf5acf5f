import type { Netlist } from "../netlist/index.ts";
import { changedTo } from "../parts/index.ts";
import { defineRule, type Finding } from "./rule.ts";
import { elementsOf, partId, usesOf, type ElementOf } from "./study/elements.ts";
import { spreadFrom, startNodes, type Step } from "./study/spread.ts";
import { listOf, nameOf } from "./study/words.ts";

export const autoReset = defineRule({
  id: "auto-reset",
  level: "advice",
  about: "A breaker that closes again by itself feeds something that may run with nobody watching.",
  source: "Common practice, no source; some fleet specifications ask for self-resetting breakers, so this is advice",
  check: ({ netlist }) =>
    elementsOf(netlist, "protection").flatMap((breaker): Finding[] => {
      const unattended = breaker.spec.autoReset ? unattendedBehind(netlist, breaker) : [];
      if (unattended.length === 0) return [];
      return [
        {
          at: [partId(breaker), ...new Set(unattended.map(partId))],
          measure: { ratingA: breaker.spec.ratingA },
          remedies: [
            {
              id: "reset-by-hand",
              text: "Fit a breaker that is reset by hand",
              edits: [{ op: "set-props", id: partId(breaker), change: changedTo.resetByHand }],
            },
          ],
        },
      ];
    }),
  say: (finding, study) =>
    `After a fault behind ${nameOf(study, finding.at[0]!)} it turns itself back on, again and again, into ${listOf(study, finding.at.slice(1))}.`,
});

/** Loads that run for long, have no other feed, and are not held on by hand. */
function unattendedBehind(netlist: Netlist, breaker: ElementOf<"protection">): readonly ElementOf<"load">[] {
  const without = reachOfSources(netlist, ({ element }) => element === breaker);
  const unheld = reachOfSources(
    netlist,
    ({ element }) => element?.part.control?.momentary === true && element.spec.type === "contact",
  );
  return usesOf(netlist).filter(({ spec, a, b }) => {
    const isFed = unheld.has(a) || unheld.has(b);
    return spec.continuous && isFed && !without.has(a) && !without.has(b);
  });
}

function reachOfSources(netlist: Netlist, isBarred: (step: Step) => boolean): Set<number> {
  return new Set(startNodes(netlist).flatMap(({ node }) => [...spreadFrom(netlist, node, isBarred)]));
}
