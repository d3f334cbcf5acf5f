/**
 * Star-mesh elimination: a resistive network solved without one subtraction of conductances.
 *
 * Every edge is a conductance g with a current h that flows along it when both ends are at the same volts (a source behind its
 * resistance, a load). Taking out vertex k turns the star of its edges into a mesh between its neighbours: i and j get
 * g_i g_j / S, with S the sum of k's conductances, and the current (g_i h_j - g_j h_i) / S. Products and sums of positive
 * numbers keep all their digits, so an island held by picosiemens comes out as exactly as one held by copper; and since
 * currents live on edges, not at vertices, what enters one end leaves at the other whatever the rounding.
 * Going back, v_k = sum of (g_j / S) v_j - sum of h_j / S.
 *
 * Each position gathers what its earlier neighbours spread onto it, always in the same order. So after a few edges have changed
 * only the positions on their way to the root are gathered again, and the result is that of starting afresh, bit for bit.
 * Source of the transformation: A. Rosen, "A new network theorem", J. IEE 62 (1924), 916-918.
 */
import type { EliminationPlan } from "./elimination-plan.ts";

/** Below this sum of conductances (S) a position has no neighbour: it is the last of its network. */
const NOTHING = 1e-200;
/** From this resistance (ohm) up only ties lead on: a position that ends an island. */
const TIES_ONLY_OHM = 1e9;
/** What is left of currents this much larger, on leaving an island, is rounding: an island takes in what it gives out. */
const CANCELLED = 1e-12;

export class Elimination {
  readonly plan: EliminationPlan;
  /** Own edges: conductance and current towards the later end. */
  private readonly ownG: Float64Array;
  private readonly ownH: Float64Array;
  private readonly g: Float64Array;
  private readonly h: Float64Array;
  /** Share of each slot in its position's sum, g / S. */
  private readonly share: Float64Array;
  /** 1 / S, and 0 at the last position of a network. */
  private readonly inverse: Float64Array;
  /** Volts of each position with all later ones at 0; of the last of a network, the volts it is held at. */
  private readonly rise: Float64Array;
  private readonly heldAt = new Map<number, number>();
  private readonly isDirty: Uint8Array;
  private readonly dirty: Int32Array;
  /** Every position, ascending. */
  readonly all: Int32Array;
  private dirtyCount = 0;
  /** Some of the current last fed in was dropped where only ties lead on. */
  hasCut = false;
  /** Goes up whenever a slot begins or ceases to conduct, and with it who is joined to whom. */
  shape = 0;

  constructor(plan: EliminationPlan) {
    this.plan = plan;
    const slots = plan.slotTo.length;
    this.ownG = new Float64Array(slots);
    this.ownH = new Float64Array(slots);
    this.g = new Float64Array(slots);
    this.h = new Float64Array(slots);
    this.share = new Float64Array(slots);
    this.inverse = new Float64Array(plan.count);
    this.rise = new Float64Array(plan.count);
    this.isDirty = new Uint8Array(plan.count);
    this.dirty = new Int32Array(plan.count);
    this.all = new Int32Array(plan.count);
    for (let k = 0; k < plan.count; k++) this.all[k] = k;
  }

  /** The slot of the edge between two positions that was in the graph the plan was made for. */
  slotBetween(early: number, late: number): number {
    let low = this.plan.slotStart[early]!;
    let high = this.plan.slotStart[early + 1]! - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.plan.slotTo[middle]! < late) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Sets an edge: conductance (S) and current (A) from position `early`, its owner, to the later end. */
  setEdge(slot: number, early: number, g: number, h: number): void {
    if (this.ownG[slot] === g && this.ownH[slot] === h) return;
    this.ownG[slot] = g;
    this.ownH[slot] = h;
    this.markDirty(early);
  }

  /** Sets the volts a position is held at whenever it is the last of its network: 0 unless told. */
  hold(position: number, volts: number): void {
    if ((this.heldAt.get(position) ?? 0) === volts) return;
    this.heldAt.set(position, volts);
    this.markDirty(position);
  }

  private markDirty(position: number): void {
    const { slotStart, slotTo } = this.plan;
    for (let k = position; this.isDirty[k] === 0; k = slotTo[slotStart[k]!]!) {
      this.isDirty[k] = 1;
      this.dirty[this.dirtyCount++] = k;
      if (slotStart[k] === slotStart[k + 1]) return;
    }
  }

  /** Brings the elimination up to date with the edges set since the last time. */
  eliminate(): void {
    const { isDirty } = this;
    const path = this.dirty.subarray(0, this.dirtyCount);
    if (this.dirtyCount * 8 > isDirty.length) {
      for (let k = 0; k < isDirty.length; k++) if (isDirty[k] === 1) this.gather(k);
      isDirty.fill(0);
    } else {
      path.sort();
      for (let i = 0; i < path.length; i++) {
        this.gather(path[i]!);
        isDirty[path[i]!] = 0;
      }
    }
    this.dirtyCount = 0;
  }

  private gather(k: number): void {
    const { g, h, share } = this;
    const { slotStart, columnStart, columnSlot, columnEnd, targetStart, targets } = this.plan;
    const first = slotStart[k]!;
    const end = slotStart[k + 1]!;
    for (let s = first; s < end; s++) {
      g[s] = this.ownG[s]!;
      h[s] = this.ownH[s]!;
    }
    for (let c = columnStart[k]!; c < columnStart[k + 1]!; c++) {
      const q = columnSlot[c]!;
      const shareQ = share[q]!;
      const hQ = h[q]!;
      let t = targetStart[q]!;
      for (let b = q + 1; b < columnEnd[c]!; b++, t++) {
        const s = targets[t]!;
        g[s]! += shareQ * g[b]!;
        h[s]! += shareQ * h[b]! - share[b]! * hQ;
      }
    }
    let sumG = 0;
    let sumH = 0;
    for (let s = first; s < end; s++) {
      sumG += g[s]!;
      sumH += h[s]!;
    }
    const inverse = Math.abs(sumG) > NOTHING ? 1 / sumG : 0;
    this.inverse[k] = inverse;
    this.rise[k] = inverse === 0 ? (this.heldAt.get(k) ?? 0) : -sumH * inverse;
    for (let s = first; s < end; s++) {
      const before = share[s]!;
      share[s] = g[s]! * inverse;
      if ((before === 0) !== (share[s] === 0)) this.shape++;
    }
  }

  /**
   * Gives every position a number shared by all of its network: that of the last of the network, by `numberOfLast`. Follows what really
   * conducts, so open contacts part networks.
   */
  numberNetworks(numbers: Int32Array, numberOfLast: (position: number) => number): void {
    const { share } = this;
    const { slotStart, slotTo, count } = this.plan;
    for (let k = count - 1; k >= 0; k--) {
      const end = slotStart[k + 1]!;
      let s = slotStart[k]!;
      while (s < end && share[s] === 0) s++;
      numbers[k] = s < end ? numbers[slotTo[s]!]! : numberOfLast(k);
    }
  }

  /** These positions and all that any of them leads on to, ascending: what the volts of these hang on. */
  upFrom(positions: Iterable<number>): Int32Array {
    const { slotStart, slotTo, count } = this.plan;
    const isIn = new Uint8Array(count);
    const found: number[] = [];
    for (const position of positions) {
      for (let k = position; isIn[k] === 0; k = slotTo[slotStart[k]!]!) {
        isIn[k] = 1;
        found.push(k);
        if (slotStart[k] === slotStart[k + 1]) break;
      }
    }
    return Int32Array.from(found).sort();
  }

  /**
   * Volts of the positions in `among`, which must be closed upwards (`upFrom`), into `v`. `inflow`: amps fed into these positions
   * besides what the edges carry; left changed, ready for `solveAll`.
   */
  solve(among: Int32Array, v: Float64Array, inflow: Float64Array | null): void {
    const { inverse, rise, share } = this;
    const { slotStart, slotTo } = this.plan;
    if (inflow) this.carry(among, inflow);
    for (let i = among.length - 1; i >= 0; i--) {
      const k = among[i]!;
      let sum = rise[k]!;
      if (inflow) sum += inflow[k]! * inverse[k]!;
      const end = slotStart[k + 1]!;
      for (let s = slotStart[k]!; s < end; s++) sum += share[s]! * v[slotTo[s]!]!;
      v[k] = sum;
    }
  }

  /** Volts of every position, after `solve` among those that `inflow` feeds. */
  solveAll(v: Float64Array, inflow: Float64Array | null): void {
    const { inverse, rise, share } = this;
    const { slotStart, slotTo, count } = this.plan;
    for (let k = count - 1; k >= 0; k--) {
      let sum = rise[k]!;
      if (inflow) sum += inflow[k]! * inverse[k]!;
      const end = slotStart[k + 1]!;
      for (let s = slotStart[k]!; s < end; s++) sum += share[s]! * v[slotTo[s]!]!;
      v[k] = sum;
    }
  }

  /** Volts the positions in `among` rise by when `inflow` (A) is fed into them, all else equal. Overwrites `inflow` with them. */
  respond(among: Int32Array, inflow: Float64Array): void {
    const { inverse, share } = this;
    const { slotStart, slotTo } = this.plan;
    this.carry(among, inflow);
    for (let i = among.length - 1; i >= 0; i--) {
      const k = among[i]!;
      let sum = inflow[k]! * inverse[k]!;
      const end = slotStart[k + 1]!;
      for (let s = slotStart[k]!; s < end; s++) sum += share[s]! * inflow[slotTo[s]!]!;
      inflow[k] = sum;
    }
  }

  /** Hands currents fed in at each position on to the later ones. */
  private carry(among: Int32Array, inflow: Float64Array): void {
    const { inverse, share } = this;
    const { slotStart, slotTo } = this.plan;
    let most = 0;
    for (let i = 0; i < among.length; i++) {
      const size = Math.abs(inflow[among[i]!]!);
      if (size > most) most = size;
    }
    const noise = CANCELLED * most;
    this.hasCut = false;
    for (let i = 0; i < among.length; i++) {
      const k = among[i]!;
      const amps = inflow[k]!;
      if (amps === 0) continue;
      if (inverse[k]! > TIES_ONLY_OHM && Math.abs(amps) < noise) {
        inflow[k] = 0;
        this.hasCut = true;
      } else {
        const end = slotStart[k + 1]!;
        for (let s = slotStart[k]!; s < end; s++) inflow[slotTo[s]!]! += share[s]! * amps;
      }
    }
  }

  /** Resistance (ohm) seen between each position and the last one of its network: the diagonal of the inverse, at near-linear cost. */
  resistanceToZero(): Float64Array {
    const { slotStart, slotTo, targetStart, targets, count } = this.plan;
    const diagonal = new Float64Array(count);
    const across = new Float64Array(slotTo.length);
    for (let k = count - 1; k >= 0; k--) {
      const first = slotStart[k]!;
      const end = slotStart[k + 1]!;
      for (let q = first; q < end; q++) across[q] = this.share[q]! * diagonal[slotTo[q]!]!;
      for (let q = first; q < end; q++) {
        let t = targetStart[q]!;
        for (let b = q + 1; b < end; b++, t++) {
          const between = across[targets[t]!]!;
          across[q]! += this.share[b]! * between;
          across[b]! += this.share[q]! * between;
        }
      }
      let sum = this.inverse[k]!;
      for (let q = first; q < end; q++) sum += this.share[q]! * across[q]!;
      diagonal[k] = sum;
    }
    return diagonal;
  }
}

/** The greatest magnitude among some values; NaN among them is passed over. */
export function largest(values: Float64Array): number {
  let most = 0;
  for (let i = 0; i < values.length; i++) {
    const size = Math.abs(values[i]!);
    if (size > most) most = size;
  }
  return most;
}
