import type { Document } from "../document/index.ts";
import { modelOf, type Element, type SourceElement } from "../parts/index.ts";
import { NodeSets } from "./node-sets.ts";
import type { KnownPart } from "./terminal-lookup.ts";

/**
 * Ids of the batteries whose negative is wired straight (by wires, strips and joints alone) to another battery's positive: the
 * upper ones of a series string. Their default chassis strap does not hold, and they are no zero of a network.
 */
export function seriesUppers(document: Document, known: readonly KnownPart[], nominalV: 12 | 24): Set<string> {
  const number = new Map<string, number>();
  const nodeOf = (id: string, terminal: string): number => {
    const address = `${id}.${terminal}`;
    const at = number.get(address) ?? number.size;
    number.set(address, at);
    return at;
  };
  const modelled = known.map(({ part, terminals }) => {
    for (const terminal of terminals) nodeOf(part.id, terminal.name);
    return { id: part.id, elements: modelOf(part, { nominalV, seriesUpper: false }) };
  });
  const sets = new NodeSets(number.size);
  for (const wire of document.wires) {
    const from = number.get(wire.from);
    const to = number.get(wire.to);
    if (from !== undefined && to !== undefined) sets.join(from, to);
  }
  const batteries: { id: string; plus: number; minus: number }[] = [];
  for (const { id, elements } of modelled) {
    joinBars(sets, elements, (terminal) => nodeOf(id, terminal));
    for (const spec of elements.filter(isBattery)) {
      batteries.push({ id, plus: nodeOf(id, spec.plus), minus: nodeOf(id, spec.minus) });
    }
  }
  return new Set(
    batteries
      .filter((upper) => batteries.some((lower) => lower.id !== upper.id && sets.same(upper.minus, lower.plus)))
      .map(({ id }) => id),
  );
}

function isBattery(spec: Element): spec is SourceElement {
  return spec.type === "source" && spec.zero;
}

function joinBars(sets: NodeSets, elements: readonly Element[], nodeOf: (terminal: string) => number): void {
  for (const spec of elements) {
    if (spec.type !== "bar") continue;
    for (const terminal of spec.terminals) sets.join(nodeOf(spec.terminals[0]!), nodeOf(terminal));
  }
}
