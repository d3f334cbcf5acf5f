import type { Netlist, NetWire } from "../../netlist/index.ts";
import { elementsIn } from "./elements.ts";
import { pathsOf, type Step } from "./spread.ts";

/** A wire on the way from a source, and which of its ends faces the source. */
export interface Leg {
  readonly wire: NetWire;
  readonly near: "from" | "to";
}

/** Where ways from a part begin: the positive of its source, or of its output. */
export function startNode(netlist: Netlist, sourceId: string): number | null {
  const part = netlist.partAt.get(sourceId);
  if (!part) return null;
  return elementsIn(part, "source")[0]?.a ?? elementsIn(part, "converter")[0]?.outA ?? null;
}

/**
 * The wires from a source to this wire, both ends of the way included, by as few steps as can be; `null` when none leads there.
 * Without `pastDevices` the way passes no fuse or breaker.
 */
export function routeTo(
  netlist: Netlist,
  sourceId: string,
  goal: NetWire,
  pastDevices: boolean,
): readonly Leg[] | null {
  const start = startNode(netlist, sourceId);
  if (start === null) return null;
  const { steps } = pathsOf(netlist);
  const cameBy = new Map<number, { readonly node: number; readonly step: Step } | null>([[start, null]]);
  for (const [node] of cameBy) {
    for (const step of steps[node]!) {
      if (!pastDevices && step.element?.spec.type === "protection") continue;
      if (step.wire === goal) return legsTo(cameBy, node, goal);
      if (!cameBy.has(step.to)) cameBy.set(step.to, { node, step });
    }
  }
  return null;
}

function legsTo(
  cameBy: ReadonlyMap<number, { readonly node: number; readonly step: Step } | null>,
  end: number,
  goal: NetWire,
): Leg[] {
  const legs = [leg(goal, end)];
  for (let at = cameBy.get(end); at; at = cameBy.get(at.node))
    if (at.step.wire) legs.unshift(leg(at.step.wire, at.node));
  return legs;
}

function leg(wire: NetWire, near: number): Leg {
  return { wire, near: wire.from.node === near ? "from" : "to" };
}
