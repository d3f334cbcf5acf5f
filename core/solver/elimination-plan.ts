/**
 * The shape an order of elimination leaves behind, laid out for the loops that run over it: which neighbours each position has
 * when it goes, and onto which of their slots it spreads.
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

/** What has been eliminated so far, vertex by vertex: the order, and each vertex's neighbours at its going, one run after the other. */
export class EliminationRecord {
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

/** Lays the plan out for what was eliminated, every vertex of the graph. */
export function planOf({ done: count, order, start, neighbours }: EliminationRecord): EliminationPlan {
  const positionOf = new Int32Array(count);
  for (let k = 0; k < count; k++) positionOf[order[k]!] = k;
  const slotTo = new Int32Array(start[count]!);
  for (let k = 0; k < count; k++) {
    const first = start[k]!;
    for (let p = first; p < start[k + 1]!; p++) {
      const position = positionOf[neighbours[p]!]!;
      let at = p;
      for (; at > first && slotTo[at - 1]! > position; at--) slotTo[at] = slotTo[at - 1]!;
      slotTo[at] = position;
    }
  }
  return { count, positionOf, slotStart: start, slotTo, ...spreadLists(count, start, slotTo) };
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
