import type { Netlist, NetWire } from "../netlist/index.ts";
import { isClosed } from "../netlist/index.ts";
import { fitted } from "../parts/index.ts";
import { ampsThrough, voltsBetween } from "../readings/index.ts";
import { insertInWire } from "./remedies/insert-in-wire.ts";
import { NewIds } from "./remedies/new-ids.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { addressOf, elementsOf, partId, type ElementOf } from "./study/elements.ts";
import { existingOf } from "./study/feeds.ts";
import { positionsInWords, samplesOf, simplestOf, type Sample } from "./study/samples.ts";
import { fedFrom, pathsOf, startNodes } from "./study/spread.ts";
import { tiesIn } from "./study/ties.ts";
import { amount, nameOf, placeName } from "./study/words.ts";

/** Share of its volts from which a load that should be off is taken to work (glow, click). */
const WORKS_FROM = 0.1;

export const backfeed = defineRule({
  id: "backfeed",
  level: "fix",
  about:
    "A wire of the vehicle, or another source, that is off is made live from elsewhere, and works what hangs on it.",
  source: "Common practice (two triggers tied together without diodes); a load counts as worked from 10 % of its volts",
  check: (study) =>
    elementsOf(study.netlist, "source").flatMap((source) => (source.spec.when === null ? [] : driven(study, source))),
  say(finding, study) {
    const place = placeName(finding, study);
    const amps = finding.measure["existingA"];
    const works =
      typeof amps === "number" && amps > 0 ? ` and pushes ${amount(finding, "existingA", "A")} into what it feeds` : "";
    return `${place} is off, yet gets ${amount(finding, "volts", "V")} from elsewhere when ${finding.measure["when"]}${works}: what hangs on it works when it should not.`;
  },
});

function driven(study: Study, source: ElementOf<"source">): Finding[] {
  if (!couldBeDriven(study.netlist, source)) return [];
  const found = samplesOf(study)
    .filter(({ solution }) => solution.status === "ok")
    .filter((sample) => !isClosed(study.netlist, source, sample.combination))
    .filter((sample) => isHot(study, source, sample) || worksExisting(study, source, sample));
  const simplest = simplestOf(found);
  if (!simplest) return [];
  const { solution, combination } = simplest;
  const existing = existingOf(study.netlist, source);
  return [
    {
      at: [partId(source), addressOf(source, source.spec.plus)],
      measure: {
        volts: solution.known[source.a] === 1 ? solution.nodeV[source.a]! : null,
        existingA: existing.reduce((sum, load) => sum + Math.abs(ampsThrough(solution, load)), 0),
        when: positionsInWords(study, combination),
      },
      remedies: blockingDiode(study, source),
    },
  ];
}

function isHot({ netlist }: Study, source: ElementOf<"source">, { combination, solution }: Sample): boolean {
  return tiesIn(netlist, combination, solution).onPlus(source.a);
}

/** Also through a load or coil: enough of the volts reaches what the vehicle has on this wire. */
function worksExisting({ netlist }: Study, source: ElementOf<"source">, { solution }: Sample): boolean {
  return existingOf(netlist, source).some(
    (load) => Math.abs(voltsBetween(solution, load.a, load.b) ?? 0) > WORKS_FROM * source.spec.restV,
  );
}

/** A diode in each wire by which another source gets at it, letting current out of it only. */
function blockingDiode(study: Study, source: ElementOf<"source">): readonly Remedy[] {
  const { netlist } = study;
  const out = addressOf(source, source.spec.plus);
  const ids = new NewIds(netlist.document);
  const edits = (netlist.terminalAt.get(out)?.wires ?? [])
    .map((index) => netlist.wires[index]!)
    .filter((wire) => leadsToAnother(netlist, source, wire))
    .flatMap(({ wire }) =>
      insertInWire(netlist.document, ids, wire, {
        kind: fitted.diode,
        props: { ratedA: 6 },
        towardsFrom: wire.from === out ? "A" : "K",
        towardsTo: wire.from === out ? "K" : "A",
        end: wire.from === out ? "from" : "to",
        withinM: 0.15,
      }),
    );
  return edits.length === 0
    ? []
    : [{ id: "fit-diode", text: `Fit a blocking diode next to ${nameOf(study, out)}`, edits }];
}

/** Whether another source's current could come down this wire. */
function leadsToAnother(netlist: Netlist, source: ElementOf<"source">, wire: NetWire): boolean {
  const far = wire.from.node === source.a ? wire.to.node : wire.from.node;
  return reachOfOthers(netlist, source, source.a).has(far);
}

/** With every contact closed at once, through loads too; most feeds are not, and need no look at each combination. */
function couldBeDriven(netlist: Netlist, source: ElementOf<"source">): boolean {
  const region = reachOfOthers(netlist, source, -1);
  return region.has(source.a) || fedFrom(netlist, source.a).some(({ a, b }) => region.has(a) || region.has(b));
}

/** Nodes the other sources could make live with every contact closed, not past a return nor through `barred`. */
function reachOfOthers(netlist: Netlist, source: ElementOf<"source">, barred: number): Set<number> {
  const { steps, fixed, plus, minus } = pathsOf(netlist);
  const isReturn = (node: number) => minus[fixed.find(node)] === 1 && plus[fixed.find(node)] === 0;
  const region = new Set(startNodes(netlist).flatMap(({ element, node }) => (element === source ? [] : [node])));
  for (const node of region) {
    for (const { to } of steps[node]!) if (to !== barred && !isReturn(to)) region.add(to);
  }
  return region;
}
