import { factsOf } from "../parts/index.ts";
import { ampsThrough } from "../readings/index.ts";
import { formatNumber } from "../units/index.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { consumersOf, elementsOf, partId } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { amount, listOf } from "./study/words.ts";

/** Most that may be drawn with everything at rest, amps. */
const LIMIT_A = 0.05;
const HOURS = 24;

export const restDrain = defineRule({
  id: "rest-drain",
  level: "advice",
  about: "More than 50 mA is drawn with everything switched off; the battery goes flat by itself.",
  source: "Workshop practice: 20 to 50 mA is normal with the key off",
  check(study) {
    const rest = study.situations[0]!;
    if (!rest.settled) return [];
    const sources = elementsOf(study.netlist, "source")
      .map((source) => ({ source, amps: ampsThrough(rest.solution, source) }))
      .filter(({ amps }) => amps > 0)
      .toSorted((one, other) => other.amps - one.amps);
    const restDrainA = sources.reduce((sum, { amps }) => sum + amps, 0);
    if (!isOver(restDrainA, LIMIT_A)) return [];
    const drawing = consumersOf(study.netlist).filter(
      (one) => Math.abs(ampsThrough(rest.solution, one)) > LIMIT_A / 50,
    );
    const at = [...new Set([...sources.map(({ source }) => partId(source)), ...drawing.map(partId)])];
    return [
      {
        at,
        measure: {
          restDrainA,
          daysToHalf: daysToHalf(sources),
          sources: new Set(sources.map(({ source }) => partId(source))).size,
        },
        remedies: [{ id: "fit-isolator", text: "Take the feed from a switched source, or fit an isolator", edits: [] }],
      },
    ];
  },
  say(finding: Finding, study: Study) {
    const days = finding.measure["daysToHalf"];
    const loads = listOf(study, finding.at.slice(Number(finding.measure["sources"])));
    const flat =
      typeof days === "number"
        ? `the battery is half flat in about ${formatNumber(days, 2)} days`
        : "enter the battery's amp-hours to see how long it lasts";
    return `With everything switched off ${amount(finding, "restDrainA", "A")} is drawn${loads === "" ? "" : ` by ${loads}`}: ${flat}.`;
  },
});

/** Until the first battery has given half of its capacity; `null` when a capacity is not stated. */
function daysToHalf(
  sources: readonly { readonly source: Parameters<typeof partId>[0]; readonly amps: number }[],
): number | null {
  const days = sources.flatMap(({ source, amps }) => {
    const { battery } = factsOf(source.part.part);
    return battery ? [battery.capacityAh === null ? null : battery.capacityAh / 2 / amps / HOURS] : [];
  });
  return days.length === 0 || days.includes(null) ? null : Math.min(...days.map(Number));
}
