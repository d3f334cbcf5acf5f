/** Groups of numbers that belong together, grown by joining two at a time. */
export class Joined {
  private readonly parent: Int32Array;

  constructor(count: number) {
    this.parent = Int32Array.from({ length: count }, (_, at) => at);
  }

  /** The number that stands for the whole group of `at`. */
  groupOf(at: number): number {
    let root = at;
    while (this.parent[root] !== root) root = this.parent[root]!;
    for (let step = at; step !== root;) {
      const next = this.parent[step]!;
      this.parent[step] = root;
      step = next;
    }
    return root;
  }

  join(a: number, b: number): void {
    this.parent[this.groupOf(a)] = this.groupOf(b);
  }
}
