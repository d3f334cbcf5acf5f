import type { NetTerminal } from "../../netlist/index.ts";
import type { PaperSource } from "../paper.ts";

/** Terminals that wires and bars alone join, group by group in the order of the drawing: one spot of each is worth probing. */
export function wireGroups({ netlist }: PaperSource): NetTerminal[][] {
  const groupOf = netlist.terminals.map((_, at) => at);
  const rootOf = (at: number): number => {
    let root = at;
    while (groupOf[root] !== root) root = groupOf[root]!;
    return root;
  };
  const join = (a: number, b: number) => {
    const [one, other] = [rootOf(a), rootOf(b)];
    groupOf[Math.max(one, other)] = Math.min(one, other);
  };
  const firstAtNode = new Map<number, number>();
  for (const { index, node } of netlist.terminals) {
    const first = firstAtNode.get(node);
    if (first === undefined) firstAtNode.set(node, index);
    else join(first, index);
  }
  for (const { from, to } of netlist.wires) join(from.index, to.index);
  const groups = new Map<number, NetTerminal[]>();
  for (const terminal of netlist.terminals) {
    const root = rootOf(terminal.index);
    groups.set(root, [...(groups.get(root) ?? []), terminal]);
  }
  return [...groups.values()];
}
