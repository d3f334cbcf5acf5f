/**
 * Currents of zero-ohm branches. Volts can't tell them, so they follow from what the rest of the circuit takes out of each node
 * of the cluster. Where zero-ohm branches form loops the split is that of equal tiny resistances: the same network solved
 * with one ohm in place of every zero-ohm branch.
 */
import type { RigidLink } from "./clusters.ts";
import { Elimination } from "./elimination.ts";
import { planElimination } from "./ordering.ts";

export class RigidFlows {
  private readonly links: readonly RigidLink[];
  private readonly nodes: Int32Array;
  private readonly linkA: Int32Array;
  private readonly linkB: Int32Array;
  private readonly elimination: Elimination;
  private readonly inflow: Float64Array;

  constructor(all: readonly RigidLink[]) {
    const links = all.filter((link) => link.a !== link.b);
    this.links = links;
    const numberOf = new Map<number, number>();
    const numbered = (node: number): number => {
      if (!numberOf.has(node)) numberOf.set(node, numberOf.size);
      return numberOf.get(node)!;
    };
    const ends = links.flatMap((link) => [numbered(link.a), numbered(link.b)]);
    const plan = planElimination(numberOf.size, Int32Array.from(ends), []);
    this.elimination = new Elimination(plan);
    const positionOf = (node: number): number => plan.positionOf[numberOf.get(node)!]!;
    this.linkA = Int32Array.from(links, (link) => positionOf(link.a));
    this.linkB = Int32Array.from(links, (link) => positionOf(link.b));
    this.nodes = new Int32Array(plan.count);
    for (const node of numberOf.keys()) this.nodes[positionOf(node)] = node;
    this.inflow = new Float64Array(plan.count);
    const beside = new Map<number, number>();
    links.forEach((_, i) => {
      const early = Math.min(this.linkA[i]!, this.linkB[i]!);
      const late = Math.max(this.linkA[i]!, this.linkB[i]!);
      const slot = this.elimination.slotBetween(early, late);
      beside.set(slot, (beside.get(slot) ?? 0) + 1);
      this.elimination.setEdge(slot, early, beside.get(slot)!, 0);
    });
    this.elimination.eliminate();
  }

  /** Writes amps a to b of every zero-ohm branch into `flowA`, given the amps that leave each node through all others. */
  fill(outOf: Float64Array, flowA: Float64Array): void {
    const { inflow, nodes } = this;
    for (let k = 0; k < nodes.length; k++) inflow[k] = -outOf[nodes[k]!]!;
    this.elimination.respond(this.elimination.all, inflow);
    this.links.forEach((link, i) => {
      flowA[link.branch] = inflow[this.linkA[i]!]! - inflow[this.linkB[i]!]!;
    });
  }
}
