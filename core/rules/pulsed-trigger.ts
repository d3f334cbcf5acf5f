import { defineRule, type Finding } from "./rule.ts";
import { partId } from "./study/elements.ts";
import { tappedFeeds, type TappedFeed } from "./study/feeds.ts";
import { listOf, nameOf, placeName } from "./study/words.ts";

export const pulsedTrigger = defineRule({
  id: "pulsed-trigger",
  level: "fix",
  about: "A relay coil or an LED hangs on a wire the vehicle switches on and off fast to dim or to test its lamps.",
  source: "Common practice, no source",
  check: ({ netlist }) => tappedFeeds(netlist).flatMap(pulsedLoads),
  say(finding, study) {
    const feed = nameOf(study, finding.at.at(-1)!);
    const hung = listOf(study, finding.at.slice(0, -1));
    return finding.level
      ? `Whether ${feed} is pulsed is not known; if it is, ${hung} will buzz or flicker. Measure it and enter the answer.`
      : `${placeName(finding, study, finding.at.length - 1)} is pulsed: ${hung} will buzz or flicker on it.`;
  },
});

function pulsedLoads({ source, facts, feeds }: TappedFeed): Finding[] {
  if (facts.pulsed === "no") return [];
  const harmed = feeds.filter(({ spec }) => spec.type === "coil" || (spec.type === "load" && isLed(spec.draw)));
  if (harmed.length === 0) return [];
  return [
    {
      ...(facts.pulsed === "yes" ? {} : { level: "cant-check" }),
      at: [...new Set(harmed.map(partId)), partId(source)],
      measure: { pulsed: facts.pulsed },
      remedies: [
        { id: "steady-signal", text: "Take a steady signal, or fit a driver made for pulsed lamp feeds", edits: [] },
      ],
    },
  ];
}

/** An electronic lamp: it goes out between pulses, where a filament only dims. */
function isLed(draw: { readonly law: string; readonly opens?: unknown }): boolean {
  return draw.law === "power" && draw.opens !== null;
}
