import { changedTo } from "../parts/index.ts";
import { defineRule, type Finding } from "./rule.ts";
import { addressOf, partId } from "./study/elements.ts";
import { tappedFeeds, type TappedFeed } from "./study/feeds.ts";
import { nameOf, placeName } from "./study/words.ts";

export const coilUnsuppressed = defineRule({
  id: "coil-unsuppressed",
  level: "fix",
  about: "A relay coil without a diode or resistor across it hangs on a wire driven by the vehicle's electronics.",
  source: "Relay makers' notes: an unsuppressed 12 V coil can give 1000 V and more as it lets go",
  check: ({ netlist }) => tappedFeeds(netlist).flatMap(unsuppressed),
  say(finding, study) {
    const coil = placeName(finding, study);
    const feed = nameOf(study, finding.at[1]!);
    return finding.level
      ? `${coil} has no diode or resistor across its coil; whether the vehicle's electronics drive ${feed} is not known. Enter whether it is watched or pulsed.`
      : `Each time ${nameOf(study, finding.at[0]!)} lets go, its coil kicks a spike into the electronics behind ${feed}.`;
  },
});

function unsuppressed({ source, facts, feeds }: TappedFeed): Finding[] {
  const answers = [facts.monitored, facts.pulsed];
  if (answers.every((answer) => answer === "no")) return [];
  return feeds.flatMap((coil): Finding[] => {
    if (coil.spec.type !== "coil" || coil.spec.suppression !== "none") return [];
    const id = partId(coil);
    return [
      {
        ...(answers.includes("yes") ? {} : { level: "cant-check" }),
        at: [id, partId(source), addressOf(coil, coil.spec.b), addressOf(coil, coil.spec.a)],
        measure: { monitored: facts.monitored, pulsed: facts.pulsed },
        remedies:
          "suppression" in coil.part.settings
            ? [
                {
                  id: "suppressed-relay",
                  text: "Fit a relay with a resistor across its coil",
                  edits: [{ op: "set-props", id, change: changedTo.suppressedEitherWay }],
                },
              ]
            : [],
      },
    ];
  });
}
