import { NodeSets, type NetElement, type Netlist } from "../netlist/index.ts";

/**
 * The net with everything fixed drawn together: wires, joints and fitted fuses. Each set of nodes is one *class*. A class that
 * holds an end of a source that is always there is a *rail*: whatever the controls do, it stands where it stands, and so
 * circuits that only meet in rails do not influence one another.
 */
export interface Rails {
  readonly classOf: Int32Array;
  /** 1 for classes that are always tied to a source positive. */
  readonly plus: Uint8Array;
  /** 1 for classes tied to a source negative and to no positive: a return. */
  readonly minus: Uint8Array;
  readonly isRail: Uint8Array;
}

export function railsOf(netlist: Netlist): Rails {
  const sets = fixedSets(netlist);
  const classOf = Int32Array.from({ length: netlist.nodeCount }, (_, node) => sets.find(node));
  const plus = new Uint8Array(netlist.nodeCount);
  const anyPlus = new Uint8Array(netlist.nodeCount);
  const minus = new Uint8Array(netlist.nodeCount);
  for (const { spec, a, b, outA, outB } of netlist.elements) {
    if (spec.type === "source") {
      if (spec.when === null) plus[classOf[a]!] = 1;
      anyPlus[classOf[a]!] = 1;
      minus[classOf[b]!] = 1;
    }
    if (spec.type === "converter") {
      anyPlus[classOf[outA]!] = 1;
      minus[classOf[outB]!] = 1;
    }
  }
  for (let one = 0; one < minus.length; one++) if (anyPlus[one] === 1) minus[one] = 0;
  const isRail = plus.map((value, one) => (value === 1 || minus[one] === 1 ? 1 : 0));
  return { classOf, plus, minus, isRail };
}

/** Nodes joined without any contact: by wires, links and fitted protection. */
function fixedSets(netlist: Netlist): NodeSets {
  const sets = new NodeSets(netlist.nodeCount);
  for (const wire of netlist.wires) sets.join(wire.from.node, wire.to.node);
  for (const element of netlist.elements) if (isFixed(element)) sets.join(element.a, element.b);
  return sets;
}

export function isFixed({ spec }: NetElement): boolean {
  return spec.type === "link" || (spec.type === "protection" && spec.closed);
}
