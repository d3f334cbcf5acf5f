import { ampsThrough, daysToHalf, restDeliveries } from "../readings/index.ts";
import { formatDays } from "../units/index.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { consumersOf, partId } from "./study/elements.ts";
import { isOver } from "./study/limits.ts";
import { amount, listOf } from "./study/words.ts";

/** Most that may be drawn with everything at rest, amps. */
const LIMIT_A = 0.05;

export const restDrain = defineRule({
  id: "rest-drain",
  level: "advice",
  about: "More than 50 mA is drawn with everything switched off; the battery goes flat by itself.",
  source: "Workshop practice: 20 to 50 mA is normal with the key off",
  check(study) {
    const rest = study.situations[0]!;
    if (!rest.settled) return [];
    const sources = restDeliveries(study.netlist, rest);
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
        ? `the battery is half flat in ${formatDays(days)}`
        : "enter the battery's amp-hours to see how long it lasts";
    return `With everything switched off ${amount(finding, "restDrainA", "A")} is drawn${loads === "" ? "" : ` by ${loads}`}: ${flat}.`;
  },
});
