/** Disjoint sets of numbered nodes: which are one piece of metal, one network, one group. Near constant time per step. */
export class NodeSets {
  private readonly parent: Int32Array;

  constructor(count: number) {
    this.parent = Int32Array.from({ length: count }, (_, node) => node);
  }

  /** The node that stands for the set of `node`. */
  find(node: number): number {
    let root = node;
    while (this.parent[root] !== root) root = this.parent[root]!;
    while (this.parent[node] !== root) {
      const next = this.parent[node]!;
      this.parent[node] = root;
      node = next;
    }
    return root;
  }

  /** Makes one set of two; the smaller number stands for it, so that the result does not depend on the order of joining. */
  join(a: number, b: number): void {
    const rootA = this.find(a);
    const rootB = this.find(b);
    if (rootA === rootB) return;
    if (rootA < rootB) this.parent[rootB] = rootA;
    else this.parent[rootA] = rootB;
  }

  same(a: number, b: number): boolean {
    return this.find(a) === this.find(b);
  }
}
