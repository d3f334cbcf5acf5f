/**
 * A graph that vertices are taken out of: half-edges in linked lists, each knowing its mate at the other end. What leads to a vertex
 * that is gone is swept out by whoever comes past, so taking one out costs no more than looking at its neighbours.
 */
export class ShrinkingGraph {
  readonly head: Int32Array;
  readonly degree: Int32Array;
  readonly gone: Uint8Array;
  private next: Int32Array;
  private to: Int32Array;
  private mate: Int32Array;
  private used = 0;
  private readonly seen: Int32Array;
  private seal = 0;

  constructor(vertexCount: number, ends: Int32Array) {
    this.head = new Int32Array(vertexCount).fill(-1);
    this.degree = new Int32Array(vertexCount);
    this.gone = new Uint8Array(vertexCount);
    this.seen = new Int32Array(vertexCount);
    const room = Math.max(16, ends.length + (ends.length >> 1));
    this.next = new Int32Array(room);
    this.to = new Int32Array(room);
    this.mate = new Int32Array(room);
    // Only edges given one after the other are merged here: those apart are found when the tree parts are gone.
    for (let e = 0; e < ends.length; e += 2) {
      const newest = this.head[ends[e]!]!;
      if (newest < 0 || this.to[newest] !== ends[e + 1]) this.join(ends[e]!, ends[e + 1]!);
    }
  }

  join(a: number, b: number): void {
    if (this.used + 2 > this.to.length) this.grow();
    const there = this.used++;
    const back = this.used++;
    this.place(there, a, b, back);
    this.place(back, b, a, there);
    this.degree[a]!++;
    this.degree[b]!++;
  }

  private place(half: number, from: number, to: number, mate: number): void {
    this.to[half] = to;
    this.mate[half] = mate;
    this.next[half] = this.head[from]!;
    this.head[from] = half;
  }

  private grow(): void {
    const wider = (old: Int32Array): Int32Array => {
      const fresh = new Int32Array(old.length * 2);
      fresh.set(old);
      return fresh;
    };
    this.next = wider(this.next);
    this.to = wider(this.to);
    this.mate = wider(this.mate);
  }

  /** Drops every second edge between the same two vertices, at both its ends, and recounts degrees. */
  mergeParallel(): void {
    for (let v = 0; v < this.head.length; v++) {
      if (this.gone[v]) continue;
      const seal = ++this.seal;
      let before = -1;
      let count = 0;
      for (let half = this.head[v]!; half >= 0; half = this.next[half]!) {
        const other = this.to[half]!;
        if (other < 0 || this.gone[other]) this.unlink(v, before, half);
        else if (this.seen[other] === seal) {
          this.to[this.mate[half]!] = -1;
          this.unlink(v, before, half);
        } else {
          this.seen[other] = seal;
          before = half;
          count++;
        }
      }
      this.degree[v] = count;
    }
  }

  private unlink(v: number, before: number, half: number): void {
    if (before < 0) this.head[v] = this.next[half]!;
    else this.next[before] = this.next[half]!;
  }

  /** Fills `neighbours` (and the half-edges that lead there) with the distinct vertices still joined to v; gives their number. */
  collect(v: number, neighbours: number[], halves: number[]): number {
    const seal = ++this.seal;
    let count = 0;
    for (let half = this.head[v]!; half >= 0; half = this.next[half]!) {
      const other = this.to[half]!;
      if (this.gone[other]) continue;
      if (this.seen[other] === seal) {
        this.degree[other]!--;
        continue;
      }
      this.seen[other] = seal;
      neighbours[count] = other;
      halves[count++] = half;
    }
    return count;
  }

  /** Whether a and b are joined; looks through the shorter list and sweeps out what is gone on the way. */
  joined(a: number, b: number): boolean {
    const [v, wanted] = this.degree[a]! <= this.degree[b]! ? [a, b] : [b, a];
    let before = -1;
    for (let half = this.head[v]!; half >= 0; half = this.next[half]!) {
      const other = this.to[half]!;
      if (other === wanted) return true;
      if (this.gone[other]) this.unlink(v, before, half);
      else before = half;
    }
    return false;
  }

  /** Takes away v, which has just the two neighbours reached by these half-edges, by turning its two edges into one. */
  shortCircuit(halfToA: number, halfToB: number, a: number, b: number): void {
    const fromA = this.mate[halfToA]!;
    const fromB = this.mate[halfToB]!;
    this.to[fromA] = b;
    this.to[fromB] = a;
    this.mate[fromA] = fromB;
    this.mate[fromB] = fromA;
  }
}
