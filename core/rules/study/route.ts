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

/** How each node was first come by, walking out from a source. */
type Tree = ReadonlyMap<number, { readonly node: number; readonly step: Step } | null>;

const kept = new WeakMap<Netlist, Map<string, Tree>>();

function treeFrom(netlist: Netlist, start: number, pastDevices: boolean): Tree {
  const trees = kept.get(netlist) ?? new Map<string, Tree>();
  kept.set(netlist, trees);
  const key = `${start} ${pastDevices}`;
  let tree = trees.get(key);
  if (!tree) {
    tree = grow(netlist, start, pastDevices);
    trees.set(key, tree);
  }
  return tree;
}

function grow(netlist: Netlist, start: number, pastDevices: boolean): Tree {
  const { steps } = pathsOf(netlist);
  const cameBy = new Map<number, { readonly node: number; readonly step: Step } | null>([[start, null]]);
  for (const [node] of cameBy) {
    for (const step of steps[node]!) {
      if (!pastDevices && step.element?.spec.type === "protection") continue;
      if (!cameBy.has(step.to)) cameBy.set(step.to, { node, step });
    }
  }
  return cameBy;
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
  const tree = treeFrom(netlist, start, pastDevices);
  const [from, to] = [wayTo(tree, goal.from.node, goal), wayTo(tree, goal.to.node, goal)];
  const [near, end] = from && (!to || from.length <= to.length) ? [from, goal.from.node] : [to, goal.to.node];
  return near && [...near, leg(goal, end)];
}

/** Legs up to this node, the goal itself left out; `null` when the node is not reached. */
function wayTo(tree: Tree, node: number, goal: NetWire): Leg[] | null {
  if (!tree.has(node)) return null;
  const legs: Leg[] = [];
  for (let at = tree.get(node); at; at = tree.get(at.node)) {
    if (at.step.wire === goal) return null;
    if (at.step.wire) legs.unshift(leg(at.step.wire, at.node));
  }
  return legs;
}

function leg(wire: NetWire, near: number): Leg {
  return { wire, near: wire.from.node === near ? "from" : "to" };
}
