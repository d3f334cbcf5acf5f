/**
 * The bridge between branches and the elimination, for one set of rigid (zero-ohm) branches.
 *
 * Clusters become vertices, every other branch an edge; branches between the same two clusters share one edge. Contacts that
 * are open and sources that are absent stay in the graph with conductance 0, so flicking them changes values and never the
 * plan. Only a zero-ohm branch that comes or goes needs another assembly.
 */
import type { BranchTable } from "./branch-table.ts";
import { Clusters } from "./clusters.ts";
import type { RigidLink } from "./clusters.ts";
import { Elimination, largest } from "./elimination.ts";
import { planElimination } from "./ordering.ts";

/** What every branch looks like to the linear solver: current a to b = g (va - vb) + h. */
interface LinearBranches {
  readonly g: Float64Array;
  readonly h: Float64Array;
}

/** Which network each node is in, or -1 and not known where it holds no zero. */
interface Networks {
  readonly known: Uint8Array;
  readonly network: Int32Array;
  areAllKnown: boolean;
}

export class Assembly {
  readonly clusters: Clusters;
  readonly elimination: Elimination;
  /** Position of each node's cluster in the elimination. */
  readonly positionOf: Int32Array;
  /** Best reference node of each cluster that has one, by position. */
  private readonly zeroAt = new Map<number, number>();
  private readonly table: BranchTable;
  /** The slot each branch adds to, or -1 where both its ends are in one cluster. */
  private readonly slotOf: Int32Array;
  /** Chains of the branches that share a slot, in ascending order: the first of each slot, the next of each branch. */
  private readonly firstOnSlot: Int32Array;
  private readonly nextOnSlot: Int32Array;
  private readonly positionV: Float64Array;
  private readonly inflow: Float64Array;
  private hasInflow = false;
  /** Nodes at which watched branches end, and the positions their volts hang on. */
  private readonly watchedNodes: Int32Array;
  private readonly watchedPositions: Int32Array;
  private readonly networksFound: Networks;
  private readonly networkAt: Int32Array;
  private networksShape = -1;

  constructor(table: BranchTable, references: readonly number[], links: readonly RigidLink[]) {
    this.table = table;
    const { count, a, b, nodeCount } = table;
    this.clusters = new Clusters(nodeCount, links);
    const { clusterOf } = this.clusters;
    const ends = new Int32Array(2 * count);
    let used = 0;
    for (let i = 0; i < count; i++) {
      const left = clusterOf[a[i]!]!;
      const right = clusterOf[b[i]!]!;
      if (left === right) continue;
      ends[used++] = left;
      ends[used++] = right;
    }
    const zeros = new Map<number, number>();
    for (const node of references) if (!zeros.has(clusterOf[node]!)) zeros.set(clusterOf[node]!, node);
    const late = new Uint8Array(this.clusters.count);
    for (const index of table.watched) late[clusterOf[a[index]!]!] = late[clusterOf[b[index]!]!] = 1;
    const last = [...zeros.keys()].reverse();
    const plan = planElimination(this.clusters.count, ends.subarray(0, used), last, late);
    this.elimination = new Elimination(plan);
    this.positionOf = links.length === 0 ? plan.positionOf : clusterOf.map((cluster) => plan.positionOf[cluster]!);
    for (const [cluster, node] of zeros) this.zeroAt.set(plan.positionOf[cluster]!, node);
    this.positionV = new Float64Array(plan.count);
    this.inflow = new Float64Array(plan.count);
    this.networkAt = new Int32Array(plan.count);
    this.networksFound = { known: new Uint8Array(nodeCount), network: new Int32Array(nodeCount), areAllKnown: true };
    this.slotOf = new Int32Array(count).fill(-1);
    this.firstOnSlot = new Int32Array(plan.slotTo.length).fill(-1);
    this.nextOnSlot = new Int32Array(count).fill(-1);
    this.findSlots();
    this.watchedNodes = Int32Array.from(new Set(table.watched.flatMap((index) => [a[index]!, b[index]!])));
    this.watchedPositions = this.elimination.upFrom(this.watchedNodes.map((node) => this.positionOf[node]!));
  }

  private findSlots(): void {
    const { a, b, count } = this.table;
    for (let i = count - 1; i >= 0; i--) {
      const left = this.positionOf[a[i]!]!;
      const right = this.positionOf[b[i]!]!;
      if (left === right) continue;
      const owner = Math.min(left, right);
      const slot = this.elimination.slotBetween(owner, Math.max(left, right));
      this.slotOf[i] = slot;
      this.nextOnSlot[i] = this.firstOnSlot[slot]!;
      this.firstOnSlot[slot] = i;
    }
  }

  /** Takes over the values of every branch, and the offsets of the zeros. */
  loadAll(values: LinearBranches): void {
    const { zeroAt, elimination, clusters } = this;
    for (const [position, node] of zeroAt) elimination.hold(position, 0 - clusters.offset[node]!);
    for (let i = 0; i < this.slotOf.length; i++) {
      if (this.slotOf[i]! >= 0 && this.firstOnSlot[this.slotOf[i]!] === i) this.load(i, values);
    }
  }

  /** Takes over the present values of a branch (and of those beside it). */
  load(branch: number, { g, h }: LinearBranches): void {
    const slot = this.slotOf[branch]!;
    if (slot < 0) return;
    const { a, b } = this.table;
    const { offset } = this.clusters;
    const owner = Math.min(this.positionOf[a[branch]!]!, this.positionOf[b[branch]!]!);
    let slotG = 0;
    let slotH = 0;
    for (let i = this.firstOnSlot[slot]!; i >= 0; i = this.nextOnSlot[i]!) {
      const flow = h[i]! + g[i]! * (offset[a[i]!]! - offset[b[i]!]!);
      slotG += g[i]!;
      slotH += this.positionOf[a[i]!] === owner ? flow : -flow;
    }
    this.elimination.setEdge(slot, owner, slotG, slotH);
  }

  /**
   * Solves with the values loaded so far and, for each of the draws, `extraA` more flowing from a to b. Only where watched branches
   * end are `nodeV` filled in; `complete` does the rest.
   */
  solve(nodeV: Float64Array, extraA: Float64Array): void {
    const { elimination, positionV, watchedNodes } = this;
    elimination.eliminate();
    this.setInflow(extraA);
    elimination.solve(this.watchedPositions, positionV, this.hasInflow ? this.inflow : null);
    for (let i = 0; i < watchedNodes.length; i++) this.take(watchedNodes[i]!, nodeV);
  }

  /** Fills in the volts of every node after `solve`. */
  complete(nodeV: Float64Array): void {
    this.elimination.solveAll(this.positionV, this.hasInflow ? this.inflow : null);
    for (let node = 0; node < nodeV.length; node++) this.take(node, nodeV);
  }

  /** Takes over the volts of one node. */
  private take(node: number, nodeV: Float64Array): void {
    nodeV[node] = this.positionV[this.positionOf[node]!]! + this.clusters.offset[node]!;
  }

  private setInflow(extraA: Float64Array): void {
    const { inflow, positionOf } = this;
    const { draws, a, b } = this.table;
    this.hasInflow = false;
    for (const index of draws) {
      if (extraA[index] === 0) continue;
      if (!this.hasInflow) inflow.fill(0);
      this.hasInflow = true;
      inflow[positionOf[a[index]!]!]! -= extraA[index]!;
      inflow[positionOf[b[index]!]!]! += extraA[index]!;
    }
  }

  /**
   * Volts by which every position is off, given the amps that leave each node through all but rigid branches: what would bring them
   * into balance, or `null` where no cluster misses it by more than `toleranceA`.
   */
  correction(outOf: Float64Array, toleranceA: number): Float64Array | null {
    const { inflow, positionOf, elimination, clusters } = this;
    if (clusters.links.length === 0 && largest(outOf) <= toleranceA) return null;
    inflow.fill(0);
    for (let node = 0; node < outOf.length; node++) inflow[positionOf[node]!]! -= outOf[node]!;
    if (largest(inflow) <= toleranceA) return null;
    elimination.respond(elimination.all, inflow);
    return inflow;
  }

  /** Follows what conducts at present: open contacts part networks. The arrays are those of the next call too. */
  networks(): Readonly<Networks> {
    const { elimination, positionOf, zeroAt, networkAt, networksFound } = this;
    if (this.networksShape === elimination.shape) return networksFound;
    const { known, network } = networksFound;
    let count = 0;
    elimination.numberNetworks(networkAt, (last) => (zeroAt.has(last) ? count++ : -1));
    let areAllKnown = true;
    for (let node = 0; node < network.length; node++) {
      const number = networkAt[positionOf[node]!]!;
      network[node] = number;
      known[node] = number < 0 ? 0 : 1;
      if (number < 0) areAllKnown = false;
    }
    networksFound.areAllKnown = areAllKnown;
    this.networksShape = elimination.shape;
    return networksFound;
  }

  /** Resistance (ohm) between two nodes at which a watched branch ends, as the network stands, sources replaced by their resistances. */
  resistanceBetween(a: number, b: number): number {
    const from = this.positionOf[a]!;
    const to = this.positionOf[b]!;
    if (from === to) return 0;
    const v = new Float64Array(this.positionV.length);
    v[from] = 1;
    v[to] = -1;
    this.elimination.respond(this.watchedPositions, v);
    return Number(v[from]) - Number(v[to]);
  }
}
