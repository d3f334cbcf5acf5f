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

/** Lays the plan out for what was eliminated. */
export function planOf(record: EliminationRecord): EliminationPlan {
  return layOut(record, inPostorder(record));
}

/** Positions of an equivalent order in which every subtree of the elimination tree is contiguous: kinder to the cache. */
function inPostorder(record: EliminationRecord): Int32Array {
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

function layOut(record: EliminationRecord, positionOf: Int32Array): EliminationPlan {
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
