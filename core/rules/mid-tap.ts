import { defineRule, type Finding, type Study } from "./rule.ts";
import { consumersOf, elementsOf, partId, type ElementOf } from "./study/elements.ts";
import { pathsOf, spreadFrom } from "./study/spread.ts";
import { nameOf, placeName } from "./study/words.ts";

export const midTap = defineRule({
  id: "mid-tap",
  level: "fix",
  about: "A load on the middle of two batteries in series drains one of them while the other is overcharged.",
  source: "Battery makers' notes on equalisers; common practice",
  check: (study) => elementsOf(study.netlist, "source").flatMap((lower) => tapped(study, lower)),
  say: (finding, study) =>
    `${placeName(finding, study)} takes its power from the middle of two batteries, at ${nameOf(study, finding.at[1]!)}: that battery goes flat while the other is overcharged.`,
});

/** Everything with an end on the metal between this battery's positive and the next one's negative. */
function tapped({ netlist }: Study, lower: ElementOf<"source">): Finding[] {
  const { fixed } = pathsOf(netlist);
  const isMiddle =
    lower.spec.zero &&
    elementsOf(netlist, "source").some((upper) => upper !== lower && upper.spec.zero && fixed.same(upper.b, lower.a));
  if (!isMiddle) return [];
  const middle = spreadFrom(netlist, lower.a);
  return consumersOf(netlist)
    .filter(({ a, b }) => middle.has(a) !== middle.has(b))
    .map((load) => ({
      at: [partId(load), `${partId(lower)}.${lower.spec.plus}`],
      measure: {},
      remedies: [
        { id: "fit-converter", text: "Feed it from the whole string through a 24 to 12 V converter", edits: [] },
      ],
    }));
}
