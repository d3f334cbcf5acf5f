/**
 * Nodes held together without any resistance.
 *
 * A zero-ohm branch leaves no freedom: its ends differ by exactly its volts (0 for a wire, the EMF of an ideal source). A
 * spanning forest of such branches gives every node a cluster and an offset from that cluster's first node, so the solver
 * only has one unknown per cluster. A branch that closes a loop in the forest must agree with the offsets already there; one
 * that doesn't is a contradiction, and the loop it closes names the branches that disagree.
 */

/** A zero-ohm branch: volts of `a` over `b` are those its branch has in `emf`. */
export interface RigidLink {
  readonly branch: number;
  readonly a: number;
  readonly b: number;
}

/** Offsets may differ by this much of the volts involved before ideal sources count as disagreeing: sums of EMFs round. */
const AGREES = 1e-12;

export class Clusters {
  /** Cluster of each node, 0 up. */
  readonly clusterOf: Int32Array;
  readonly count: number;
  /** Volts of each node over the first node of its cluster. */
  readonly offset: Float64Array;
  readonly links: readonly RigidLink[];
  /** Links of the forest, each after the one that reaches its earlier end; `true`: it is walked from a to b. */
  private readonly walk: { readonly link: RigidLink; readonly forward: boolean }[] = [];
  private readonly closing: RigidLink[] = [];

  constructor(nodeCount: number, links: readonly RigidLink[]) {
    this.links = links;
    this.offset = new Float64Array(nodeCount);
    this.clusterOf = new Int32Array(nodeCount).fill(-1);
    if (links.length === 0) {
      for (let node = 0; node < nodeCount; node++) this.clusterOf[node] = node;
      this.count = nodeCount;
      return;
    }
    const at = linksAtNodes(links);
    const used = new Set<RigidLink>();
    let count = 0;
    for (let first = 0; first < nodeCount; first++) {
      if (this.clusterOf[first] !== -1) continue;
      this.clusterOf[first] = count;
      for (const queue = at.has(first) ? [first] : []; queue.length > 0;) {
        const node = queue.pop()!;
        for (const link of at.get(node)!) {
          if (used.has(link)) continue;
          used.add(link);
          const other = link.a === node ? link.b : link.a;
          if (this.clusterOf[other] === -1) {
            this.clusterOf[other] = count;
            this.walk.push({ link, forward: link.a === node });
            queue.push(other);
          } else this.closing.push(link);
        }
      }
      count++;
    }
    this.count = count;
  }

  /** Works out the offsets for these EMFs. Gives the branches of a loop that can't hold, or `null` when all agree. */
  setVolts(emf: Float64Array): number[] | null {
    for (const { link, forward } of this.walk) {
      if (forward) this.offset[link.b] = this.offset[link.a]! - emf[link.branch]!;
      else this.offset[link.a] = this.offset[link.b]! + emf[link.branch]!;
    }
    for (const link of this.closing) {
      const a = this.offset[link.a]!;
      const b = this.offset[link.b]!;
      const scale = Math.abs(a) + Math.abs(b) + Math.abs(emf[link.branch]!);
      if (Math.abs(a - b - emf[link.branch]!) > AGREES * scale) return this.loopOf(link);
    }
    return null;
  }

  /** Branches of the loop that `closing` makes with the forest, itself first. */
  private loopOf(closing: RigidLink): number[] {
    const cameBy = new Map<number, { readonly link: RigidLink; readonly from: number }>();
    for (const { link, forward } of this.walk) {
      cameBy.set(forward ? link.b : link.a, { link, from: forward ? link.a : link.b });
    }
    const wayUp = (node: number): RigidLink[] => {
      const way: RigidLink[] = [];
      for (let step = cameBy.get(node); step; step = cameBy.get(step.from)) way.push(step.link);
      return way;
    };
    const left = wayUp(closing.a);
    const right = wayUp(closing.b);
    const shared = new Set(left.filter((link) => right.includes(link)));
    return [closing, ...left, ...right].filter((link) => !shared.has(link)).map((link) => link.branch);
  }
}

function linksAtNodes(links: readonly RigidLink[]): Map<number, RigidLink[]> {
  const at = new Map<number, RigidLink[]>();
  const add = (node: number, link: RigidLink): void => {
    const there = at.get(node);
    if (there) there.push(link);
    else at.set(node, [link]);
  };
  for (const link of links) {
    add(link.a, link);
    if (link.b !== link.a) add(link.b, link);
  }
  return at;
}
