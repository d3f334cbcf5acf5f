import { NodeSets, type Netlist } from "../../core/netlist/index.ts";

/** Nodes that wires and straps alone join to the negative of a source or to the chassis: 1 for each such node. */
export function groundNodes(netlist: Netlist): Uint8Array {
  const sets = new NodeSets(netlist.nodeCount);
  for (const { from, to } of netlist.wires) sets.join(from.node, to.node);
  for (const { spec, a, b } of netlist.elements) if (spec.type === "link") sets.join(a, b);
  const roots = new Set([sets.find(netlist.chassis)]);
  for (const { spec, b } of netlist.elements) if (spec.type === "source" && spec.zero) roots.add(sets.find(b));
  return Uint8Array.from({ length: netlist.nodeCount }, (_, node) => (roots.has(sets.find(node)) ? 1 : 0));
}
