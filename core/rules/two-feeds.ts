import { NodeSets, type Netlist } from "../netlist/index.ts";
import { isClosed } from "../netlist/index.ts";
import { defineRule, type Finding, type Study } from "./rule.ts";
import { consumersOf, deviceId, elementsOf, partId, type ElementOf } from "./study/elements.ts";
import { positionsInWords, samplesOf, type Sample } from "./study/samples.ts";
import { listOf, placeName } from "./study/words.ts";

export const twoFeeds = defineRule({
  id: "two-feeds",
  level: "advice",
  about: "Two fuses or two sources feed one wire at the same time, so that pulling one fuse does not make it safe.",
  source: "Common practice, no source; a link between two batteries with a fuse at each end is meant so",
  check(study) {
    const found = new Map<string, Finding>();
    const suspects = suspectNodes(study);
    if (suspects.size === 0) return [];
    for (const sample of samplesOf(study)) {
      if (sample.solution.status !== "ok") continue;
      for (const one of doubled(study, sample, suspects)) {
        const key = one.at.slice(Number(one.measure["wires"])).join();
        if (!found.has(key)) found.set(key, one);
      }
    }
    return [...found.values()];
  },
  say(finding, study) {
    const feeds = listOf(study, finding.at.slice(Number(finding.measure["wires"])));
    return `${placeName(finding, study)} is fed through ${feeds} at once when ${finding.measure["when"]}: pulling one of them does not make it safe.`;
  },
});

/** What is live and joined, in one combination or, to begin with, with everything closed and on. */
interface Stand {
  isShut(contact: ElementOf<"contact">): boolean;
  isOn(source: ElementOf<"source"> | ElementOf<"converter">): boolean;
}

/** Pieces of metal between protective devices, as the contacts stand. */
interface Metal {
  readonly of: NodeSets;
  /** Devices by the metal on their two sides. */
  readonly devices: readonly ElementOf<"protection">[];
}

function metalIn(netlist: Netlist, { isShut }: Stand): Metal {
  const of = new NodeSets(netlist.nodeCount);
  for (const wire of netlist.wires) of.join(wire.from.node, wire.to.node);
  for (const { a, b } of elementsOf(netlist, "link")) of.join(a, b);
  for (const contact of elementsOf(netlist, "contact")) if (isShut(contact)) of.join(contact.a, contact.b);
  return { of, devices: elementsOf(netlist, "protection").filter(({ spec }) => spec.closed) };
}

/** Nodes that may ever be fed twice: most drawings have none, and need no look at each combination. */
function suspectNodes({ netlist }: Study): Set<number> {
  const stand: Stand = { isShut: () => true, isOn: () => true };
  const metal = metalIn(netlist, stand);
  const doubles = new Set(
    classesOf(netlist, stand, metal).filter((one) => entriesOf(netlist, stand, metal, one).length > 1),
  );
  const nodes = Array.from({ length: netlist.nodeCount }, (_, node) => node);
  return new Set(nodes.filter((node) => doubles.has(metal.of.find(node))));
}

function classesOf(netlist: Netlist, stand: Stand, { of, devices }: Metal): number[] {
  const ends = devices.flatMap(({ a, b }) => [of.find(a), of.find(b)]);
  return [...new Set([...ends, ...fusedFeeds(netlist, stand).map(({ a }) => of.find(a))])];
}

function standIn(netlist: Netlist, { combination, solution }: Sample): Stand {
  return {
    isShut: (contact) =>
      contact.coil < 0 ? isClosed(netlist, contact, combination) : solution.active[contact.branch] === 1,
    isOn: (source) =>
      source.spec.type === "source" ? isClosed(netlist, source, combination) : solution.active[source.branch] === 1,
  };
}

function doubled(study: Study, sample: Sample, suspects: ReadonlySet<number>): Finding[] {
  const { netlist } = study;
  const stand = standIn(netlist, sample);
  const metal = metalIn(netlist, stand);
  const served = new Set(consumersOf(netlist).flatMap(({ a, b }) => [metal.of.find(a), metal.of.find(b)]));
  return classesOf(netlist, stand, metal).flatMap((one): Finding[] => {
    if (!suspects.has(one)) return [];
    const entries = entriesOf(netlist, stand, metal, one);
    const isUsed =
      served.has(one) ||
      metal.devices.some((device) => touches(metal, device, one) && !entries.includes(deviceId(device)));
    if (entries.length < 2 || !isUsed) return [];
    const wires = netlist.wires.filter(({ from }) => metal.of.find(from.node) === one).map(({ wire }) => wire.id);
    return [
      {
        at: [...wires, ...entries],
        measure: { wires: wires.length, when: positionsInWords(study, sample.combination) },
        remedies: [{ id: "one-feed", text: "Feed it through one of them only, or put a diode after each", edits: [] }],
      },
    ];
  });
}

/** Devices through which this metal is fed from outside itself, and fused feeds that start in it. */
function entriesOf(netlist: Netlist, stand: Stand, metal: Metal, one: number): string[] {
  const own = fusedFeeds(netlist, stand).filter(({ a }) => metal.of.find(a) === one);
  const beside = metal.devices.filter((device) => touches(metal, device, one));
  if (own.length + beside.length < 2) return [];
  const hot = hotWithout(netlist, stand, metal, one);
  const through = beside.filter(({ a, b }) => hot.has(metal.of.find(a)) || hot.has(metal.of.find(b))).map(deviceId);
  return [...new Set([...through, ...own.map(partId)])];
}

function touches({ of }: Metal, { a, b }: ElementOf<"protection">, one: number): boolean {
  return (of.find(a) === one) !== (of.find(b) === one);
}

function fusedFeeds(netlist: Netlist, { isOn }: Stand): readonly ElementOf<"source">[] {
  return elementsOf(netlist, "source").filter((source) => source.spec.fuseA !== undefined && isOn(source));
}

/** Metal that a source makes live without going through `barred`. */
function hotWithout(netlist: Netlist, { isOn }: Stand, { of, devices }: Metal, barred: number): Set<number> {
  const hot = new Set<number>();
  for (const source of elementsOf(netlist, "source")) if (isOn(source)) hot.add(of.find(source.a));
  for (const one of elementsOf(netlist, "converter")) if (isOn(one)) hot.add(of.find(one.outA));
  hot.delete(barred);
  const ties = [
    ...devices.map(({ a, b }) => [of.find(a), of.find(b), true] as const),
    ...elementsOf(netlist, "diode").map(({ a, b }) => [of.find(a), of.find(b), false] as const),
  ];
  for (let size = -1; size !== hot.size;) {
    size = hot.size;
    for (const [a, b, bothWays] of ties) {
      if (hot.has(a) && b !== barred) hot.add(b);
      if (bothWays && hot.has(b) && a !== barred) hot.add(a);
    }
  }
  return hot;
}
