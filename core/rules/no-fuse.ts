import { fitted } from "../parts/index.ts";
import { NodeSets, type NetWire } from "../netlist/index.ts";
import type { Way } from "../positions/index.ts";
import { fuseAtSource } from "./remedies/fuse-at-source.ts";
import { insertInWire } from "./remedies/insert-in-wire.ts";
import { NewIds } from "./remedies/new-ids.ts";
import { defineRule, type Finding, type Remedy, type Study } from "./rule.ts";
import { routeTo } from "./study/route.ts";
import { amount, listOf, nameOf, placeName } from "./study/words.ts";

export const noFuse = defineRule({
  id: "no-fuse",
  level: "stop",
  about:
    "A live wire with no fuse or breaker between it and a source; a short anywhere along it has nothing to stop it.",
  source: "Trucking council RP 111C and UN ADR 9.2.2 (a device near the source in every circuit); 33 CFR 183.455",
  check: (study) => study.netlist.wires.flatMap((wire) => unfused(study, wire)),
  say(finding, study) {
    const sources = listOf(study, finding.at.slice(1));
    if (finding.level === "advice") {
      return `${placeName(finding, study)} is a main without a fuse by design: fit an isolator, so that it can be made dead by hand.`;
    }
    const fault = typeof finding.measure["faultA"] === "number" ? ` with up to ${amount(finding, "faultA", "A")}` : "";
    return `Nothing protects ${nameOf(study, finding.at[0]!)} from ${sources}. If it rubs through, it burns${fault}.`;
  },
});

/** Placing is judged by fuse-far where only the first device lies beyond; the wire between two batteries in series is exempt. */
export function isUnfused({ guard, seriesLink, onlyToDevices, unfusedEnd }: Way): boolean {
  return guard === null && !seriesLink && (unfusedEnd || !onlyToDevices);
}

function unfused(study: Study, wire: NetWire): Finding[] {
  const { ways, faultA } = study.standing.wires[wire.index]!;
  const open = ways.filter(isUnfused);
  const [first] = open;
  if (!first) return [];
  const { main } = wire.wire;
  if (main !== undefined && hasIsolator(study, wire)) return [];
  return [
    {
      ...(main === undefined ? {} : { level: "advice" }),
      at: [wire.wire.id, ...new Set(open.map(({ source }) => source))],
      measure: { unguardedM: first.unguardedM, faultA },
      remedies: main === undefined ? fuseFor(study, wire, first) : isolatorIn(study, wire),
    },
  ];
}

/** The fuse goes into the first wire from the source, so that everything behind it is protected too; in a link, like the other end's. */
function fuseFor(study: Study, wire: NetWire, { source, unfusedEnd }: Way): readonly Remedy[] {
  const first = routeTo(study.netlist, source, wire, false)?.[0];
  if (!first) return [];
  const { wires } = study.standing;
  const isBehind = (way: Way) => way.source === source && way.guard === null;
  const behind = study.netlist.wires.filter(({ index }) => wires[index]!.ways.some(isBehind));
  const otherA = Math.max(...wires[wire.index]!.ways.map(({ guard }) => guard?.ratingA ?? 0));
  const wanted = unfusedEnd && otherA > 0 ? { likeA: otherA } : {};
  return fuseAtSource(study, first, first.wire.wire.main === undefined ? behind : [], wanted);
}

/** A hand-operated contact at one end of this main, or between its sources and it: it can be made dead. */
function hasIsolator({ netlist, standing }: Study, wire: NetWire): boolean {
  const byWire = new NodeSets(netlist.nodeCount);
  for (const { from, to } of netlist.wires) byWire.join(from.node, to.node);
  const handMoved = netlist.elements.filter(({ spec, coil }) => spec.type === "contact" && coil < 0);
  if (handMoved.some(({ a, b }) => byWire.same(a, wire.from.node) || byWire.same(b, wire.from.node))) return true;
  for (const { spec, a, b, coil } of netlist.elements) {
    if (spec.type === "link" || (spec.type === "contact" && coil >= 0)) byWire.join(a, b);
  }
  const sources = new Set(standing.wires[wire.index]!.ways.filter(isUnfused).map(({ source }) => source));
  return !netlist.elements.some(
    ({ spec, part, a }) => spec.type === "source" && sources.has(part.part.id) && byWire.same(a, wire.from.node),
  );
}

function isolatorIn({ netlist }: Study, wire: NetWire): readonly Remedy[] {
  const edits = insertInWire(netlist.document, new NewIds(netlist.document), wire.wire, {
    kind: fitted.switch,
    props: {},
    towardsFrom: "1",
    towardsTo: "2",
    end: "from",
    withinM: 0.3,
  });
  return [{ id: "fit-isolator", text: "Fit an isolator switch in this main near the battery", edits }];
}
