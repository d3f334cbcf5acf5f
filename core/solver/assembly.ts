/**
 * The bridge between branches and the elimination, for one set of rigid (zero-ohm) branches.
 *
 * Clusters become vertices, every other branch an edge; branches between the same two clusters share one edge. Contacts that
 * are open and sources that are absent stay in the graph with conductance 0, so flicking them changes values and never the
 * plan. Only a zero-ohm branch that comes or goes needs another assembly.
 */
import type { Circuit } from "../circuit/index.ts";
import { Clusters } from "./clusters.ts";
import type { RigidLink } from "./clusters.ts";
import { Elimination } from "./elimination.ts";
import { planElimination } from "./ordering.ts";

/** What every branch looks like to the linear solver: current a to b = g (va - vb) + h. */
export interface LinearBranches {
  readonly g: Float64Array;
  readonly h: Float64Array;
  /** Volts of a rigid branch. */
  readonly emf: Float64Array;
}

export class Assembly {
  readonly clusters: Clusters;
  readonly elimination: Elimination;
  /** Position of each node's cluster in the elimination. */
  readonly positionOf: Int32Array;
  /** Best reference node in the cluster at each position, or -1. */
  readonly zeroAt: Int32Array;
  private readonly branches: Circuit["branches"];
  private readonly slotOf: Int32Array;
  private readonly slotBranchStart: Int32Array;
  private readonly slotBranches: Int32Array;
  private readonly positionV: Float64Array;

  constructor(circuit: Circuit, links: readonly RigidLink[]) {
    this.branches = circuit.branches;
    this.clusters = new Clusters(circuit.nodeCount, links);
    const { clusterOf, count } = this.clusters;
    const ends: number[] = [];
    for (const branch of circuit.branches) {
      const a = clusterOf[branch.a]!;
      const b = clusterOf[branch.b]!;
      if (a !== b) ends.push(a, b);
    }
    const zeros = new Map<number, number>();
    for (const node of circuit.references) if (!zeros.has(clusterOf[node]!)) zeros.set(clusterOf[node]!, node);
    const plan = planElimination(count, Int32Array.from(ends), [...zeros.keys()].reverse());
    this.elimination = new Elimination(plan);
    this.positionOf = Int32Array.from(clusterOf, (cluster) => plan.positionOf[cluster]!);
    this.zeroAt = new Int32Array(count).fill(-1);
    for (const [cluster, node] of zeros) this.zeroAt[plan.positionOf[cluster]!] = node;
    this.positionV = new Float64Array(count);
    this.slotOf = this.findSlots();
    const slotCount = plan.slotTo.length;
    this.slotBranchStart = new Int32Array(slotCount + 1);
    for (const slot of this.slotOf) if (slot >= 0) this.slotBranchStart[slot + 1]!++;
    for (let s = 0; s < slotCount; s++) this.slotBranchStart[s + 1]! += this.slotBranchStart[s]!;
    this.slotBranches = new Int32Array(ends.length >> 1);
    const fill = this.slotBranchStart.slice(0, slotCount);
    this.slotOf.forEach((slot, branch) => {
      if (slot >= 0) this.slotBranches[fill[slot]!++] = branch;
    });
  }

  private findSlots(): Int32Array {
    return Int32Array.from(this.branches, ({ a, b }) => {
      const left = this.positionOf[a]!;
      const right = this.positionOf[b]!;
      return left === right ? -1 : this.elimination.slotBetween(Math.min(left, right), Math.max(left, right));
    });
  }

  /** Takes over the present values of a branch (and of those beside it). */
  load(branch: number, values: LinearBranches): void {
    const slot = this.slotOf[branch]!;
    if (slot < 0) return;
    const { a, b } = this.branches[branch]!;
    const owner = Math.min(this.positionOf[a]!, this.positionOf[b]!);
    const { offset } = this.clusters;
    let g = 0;
    let h = 0;
    for (let i = this.slotBranchStart[slot]!; i < this.slotBranchStart[slot + 1]!; i++) {
      const beside = this.slotBranches[i]!;
      const ends = this.branches[beside]!;
      const conductance = values.g[beside]!;
      const flow = values.h[beside]! + conductance * (offset[ends.a]! - offset[ends.b]!);
      g += conductance;
      h += this.positionOf[ends.a] === owner ? flow : -flow;
    }
    this.elimination.setEdge(slot, owner, g, h);
  }

  /** Solves with the values loaded so far; fills `nodeV`. */
  solve(nodeV: Float64Array): void {
    const { elimination, positionV, zeroAt } = this;
    const { offset } = this.clusters;
    elimination.eliminate();
    for (let k = 0; k < positionV.length; k++) positionV[k] = zeroAt[k]! >= 0 ? -offset[zeroAt[k]!]! : 0;
    elimination.solve(positionV);
    for (let node = 0; node < nodeV.length; node++) nodeV[node] = positionV[this.positionOf[node]!]! + offset[node]!;
  }

  /** Resistance (ohm) between two nodes as the network stands, sources replaced by their resistances. */
  resistanceBetween(a: number, b: number): number {
    const from = this.positionOf[a]!;
    const to = this.positionOf[b]!;
    if (from === to) return 0;
    const v = new Float64Array(this.positionV.length);
    v[from] = 1;
    v[to] = -1;
    this.elimination.respond(v);
    return v[from]! - v[to]!;
  }
}
