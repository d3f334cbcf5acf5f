/**
 * The order in which star-mesh elimination takes the vertices of a graph, and the shape that order leaves behind.
 *
 * Idea: vehicle circuits are nearly trees. A vertex with one neighbour just goes; one with two neighbours goes and leaves an
 * edge between them. A stack of such vertices is emptied in linear time; what then remains (the ties between returns) goes by
 * minimum degree. Vertices named in `last` wait until everything else is gone, so each network ends in its own zero.
 */

/** The shape of the elimination: positions count up in the order vertices are eliminated. */
export interface EliminationPlan {
  readonly count: number;
  readonly positionOf: Int32Array;
  /**
   * Slots of position k are slotStart[k] .. slotStart[k + 1] - 1: its neighbours at the time it goes, in ascending position. The first
   * is the next position whose slots the elimination of k changes.
   */
  readonly slotStart: Int32Array;
  readonly slotTo: Int32Array;
  /** For position a, the slots (k to a) with further slots behind them: those whose elimination spreads onto a's own slots. */
  readonly columnStart: Int32Array;
  readonly columnSlot: Int32Array;
  /** One past the last slot of the position that owns a column's slot. */
  readonly columnEnd: Int32Array;
  /** For slot q = (k to a): where the run of slots begins onto which q and each later slot of k spread. */
  readonly targetStart: Int32Array;
  readonly targets: Int32Array;
}

/** Above this many neighbours two edges side by side are let be until the tree part is gone: a hub's list is long to look through. */
const HUB = 12;

/** The graph while it is being eliminated: half-edges in linked lists, each knowing its mate at the other end. */
class ShrinkingGraph {
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

/** Vertices by present degree, lowest first; a vertex whose degree changes is simply filed again. */
class DegreeQueue {
  private readonly bins: number[][] = [];
  private lowest = 0;

  add(v: number, degree: number): void {
    (this.bins[degree] ??= []).push(v);
    if (degree < this.lowest) this.lowest = degree;
  }

  take(graph: ShrinkingGraph): number {
    for (; this.lowest < this.bins.length; this.lowest++) {
      const bin = this.bins[this.lowest];
      while (bin && bin.length > 0) {
        const v = bin.pop()!;
        if (!graph.gone[v] && graph.degree[v] === this.lowest) return v;
      }
    }
    return -1;
  }
}

/** What has been eliminated so far: the order, and each vertex's neighbours at its going, one run after the other. */
class Record {
  readonly order: Int32Array;
  readonly start: Int32Array;
  neighbours: Int32Array;
  done = 0;
  private used = 0;

  constructor(vertexCount: number, edgeCount: number) {
    this.order = new Int32Array(vertexCount);
    this.start = new Int32Array(vertexCount + 1);
    this.neighbours = new Int32Array(Math.max(16, edgeCount * 2));
  }

  add(v: number, neighbours: readonly number[], count: number): void {
    if (this.used + count > this.neighbours.length) {
      const wider = new Int32Array(2 * (this.used + count));
      wider.set(this.neighbours);
      this.neighbours = wider;
    }
    for (let i = 0; i < count; i++) this.neighbours[this.used++] = neighbours[i]!;
    this.order[this.done++] = v;
    this.start[this.done] = this.used;
  }
}

/**
 * Plans the elimination of the graph with edges ends[2e] - ends[2e + 1] (repeats allowed, no loops). Vertices of `last` are
 * taken at the very end, in the order given. Near-linear for graphs that are nearly trees.
 */
export function planElimination(vertexCount: number, ends: Int32Array, last: readonly number[]): EliminationPlan {
  const graph = new ShrinkingGraph(vertexCount, ends);
  const record = new Record(vertexCount, ends.length >> 1);
  const waits = new Uint8Array(vertexCount);
  for (const v of last) waits[v] = 1;
  eliminateTreeParts(graph, record, waits);
  graph.mergeParallel();
  eliminateByDegree(graph, record, waits);
  const neighbours: number[] = [];
  const halves: number[] = [];
  for (const v of last) eliminateOne(graph, record, v, neighbours, halves);
  return layOut(record, inPostorder(record));
}

function eliminateTreeParts(graph: ShrinkingGraph, record: Record, waits: Uint8Array): void {
  const ends: number[] = [];
  const betweens: number[] = [];
  const file = (v: number): void => {
    if (waits[v] === 1 || graph.degree[v]! > 2) return;
    if (graph.degree[v] === 2) betweens.push(v);
    else ends.push(v);
  };
  for (let v = graph.head.length - 1; v >= 0; v--) file(v);
  const neighbours: number[] = [];
  const halves: number[] = [];
  while (ends.length > 0 || betweens.length > 0) {
    const v = ends.length > 0 ? ends.pop()! : betweens.pop()!;
    if (graph.gone[v] === 1) continue;
    const count = graph.collect(v, neighbours, halves);
    record.add(v, neighbours, count);
    if (count === 1) graph.degree[neighbours[0]!]!--;
    else if (count === 2) bridge(graph, halves, neighbours[0]!, neighbours[1]!);
    graph.gone[v] = 1;
    for (let i = 0; i < count; i++) file(neighbours[i]!);
  }
}

/** Joins the two neighbours of a vertex that goes, unless they are joined already. */
function bridge(graph: ShrinkingGraph, halves: readonly number[], a: number, b: number): void {
  const areHubs = graph.degree[a]! > HUB && graph.degree[b]! > HUB;
  if (!areHubs && graph.joined(a, b)) {
    graph.degree[a]!--;
    graph.degree[b]!--;
  } else graph.shortCircuit(halves[0]!, halves[1]!, a, b);
}

function eliminateByDegree(graph: ShrinkingGraph, record: Record, waits: Uint8Array): void {
  const queue = new DegreeQueue();
  for (let v = 0; v < graph.head.length; v++) if (!graph.gone[v] && !waits[v]) queue.add(v, graph.degree[v]!);
  const neighbours: number[] = [];
  const halves: number[] = [];
  for (let v = queue.take(graph); v >= 0; v = queue.take(graph)) {
    const count = eliminateOne(graph, record, v, neighbours, halves);
    for (let i = 0; i < count; i++) {
      const other = neighbours[i]!;
      if (!waits[other]) queue.add(other, graph.degree[other]!);
    }
  }
}

/** Takes one vertex out and joins all its neighbours with one another. */
function eliminateOne(
  graph: ShrinkingGraph,
  record: Record,
  v: number,
  neighbours: number[],
  halves: number[],
): number {
  const count = graph.collect(v, neighbours, halves);
  graph.gone[v] = 1;
  record.add(v, neighbours, count);
  for (let i = 0; i < count; i++) graph.degree[neighbours[i]!]!--;
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const a = neighbours[i]!;
      const b = neighbours[j]!;
      if (!graph.joined(a, b)) graph.join(a, b);
    }
  }
  return count;
}

/** Positions of an equivalent order in which every subtree of the elimination tree is contiguous: kinder to the cache. */
function inPostorder(record: Record): Int32Array {
  const count = record.done;
  const rank = new Int32Array(count);
  for (let k = 0; k < count; k++) rank[record.order[k]!] = k;
  const firstChild = new Int32Array(count).fill(-1);
  const sibling = new Int32Array(count).fill(-1);
  const roots: number[] = [];
  for (let k = count - 1; k >= 0; k--) {
    let parent = -1;
    for (let p = record.start[k]!; p < record.start[k + 1]!; p++) {
      const r = rank[record.neighbours[p]!]!;
      if (parent < 0 || r < parent) parent = r;
    }
    if (parent < 0) roots.push(k);
    else {
      sibling[k] = firstChild[parent]!;
      firstChild[parent] = k;
    }
  }
  const positionOf = new Int32Array(count);
  let position = 0;
  const stack: number[] = [];
  for (let i = roots.length - 1; i >= 0; i--) {
    stack.push(roots[i]!);
    while (stack.length > 0) {
      const k = stack[stack.length - 1]!;
      const child = firstChild[k]!;
      if (child >= 0) {
        firstChild[k] = sibling[child]!;
        stack.push(child);
      } else {
        positionOf[record.order[k]!] = position++;
        stack.pop();
      }
    }
  }
  return positionOf;
}

function layOut(record: Record, positionOf: Int32Array): EliminationPlan {
  const count = record.done;
  const slotStart = new Int32Array(count + 1);
  const slotTo = new Int32Array(record.start[count]!);
  const recordAt = new Int32Array(count);
  for (let k = 0; k < count; k++) recordAt[positionOf[record.order[k]!]!] = k;
  let used = 0;
  for (let k = 0; k < count; k++) {
    const from = record.start[recordAt[k]!]!;
    const to = record.start[recordAt[k]! + 1]!;
    for (let p = from; p < to; p++) {
      const position = positionOf[record.neighbours[p]!]!;
      let at = used++;
      for (; at > slotStart[k]! && slotTo[at - 1]! > position; at--) slotTo[at] = slotTo[at - 1]!;
      slotTo[at] = position;
    }
    slotStart[k + 1] = used;
  }
  return { count, positionOf, slotStart, slotTo, ...spreadLists(count, slotStart, slotTo) };
}

type SpreadLists = Pick<EliminationPlan, "columnStart" | "columnSlot" | "columnEnd" | "targetStart" | "targets">;

/** For every position, which eliminated neighbours spread onto its slots, and onto which of them. */
function spreadLists(count: number, slotStart: Int32Array, slotTo: Int32Array): SpreadLists {
  const columnStart = new Int32Array(count + 1);
  let targetCount = 0;
  for (let k = 0; k < count; k++) {
    const last = slotStart[k + 1]! - 1;
    for (let q = slotStart[k]!; q < last; q++) {
      columnStart[slotTo[q]! + 1]!++;
      targetCount += last - q;
    }
  }
  for (let a = 0; a < count; a++) columnStart[a + 1]! += columnStart[a]!;
  const columnSlot = new Int32Array(columnStart[count]!);
  const columnEnd = new Int32Array(columnStart[count]!);
  const fill = columnStart.slice(0, count);
  for (let k = 0; k < count; k++) {
    const end = slotStart[k + 1]!;
    for (let q = slotStart[k]!; q < end - 1; q++) {
      const at = fill[slotTo[q]!]!++;
      columnSlot[at] = q;
      columnEnd[at] = end;
    }
  }
  const targetStart = new Int32Array(slotTo.length);
  const targets = new Int32Array(targetCount);
  const slotAt = new Int32Array(count);
  let used = 0;
  for (let a = 0; a < count; a++) {
    for (let t = slotStart[a]!; t < slotStart[a + 1]!; t++) slotAt[slotTo[t]!] = t;
    for (let c = columnStart[a]!; c < columnStart[a + 1]!; c++) {
      const q = columnSlot[c]!;
      targetStart[q] = used;
      for (let b = q + 1; b < columnEnd[c]!; b++) targets[used++] = slotAt[slotTo[b]!]!;
    }
  }
  return { columnStart, columnSlot, columnEnd, targetStart, targets };
}
