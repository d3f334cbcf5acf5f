/**
 * From a settled model to the solution handed out: amps by each branch's own law, networks, and how well it all balances.
 */
import type { Solution } from "../circuit/index.ts";
import { KIND } from "./branch-table.ts";
import { largest } from "./elimination.ts";
import { filamentA } from "./load-laws.ts";
import type { Model } from "./model.ts";
import type { RelayOutcome } from "./relays.ts";

/** The solution of a settled model. */
export function readSolution(model: Model, inputW: Float64Array, pulledIn: Uint8Array): Solution {
  const { kind, zeroOhm, sources } = model.table;
  const blank = blankSolution(model);
  const { nodeV, branchA, outputA } = blank;
  const balance = new Balance(model, inputW, nodeV, branchA);
  balance.settle();
  const { outOf } = balance;
  const rigidA = model.rigidFlows(outOf);
  for (const index of rigidA ? zeroOhm : []) {
    if (!model.isRigid(index)) continue;
    const amps = rigidA![index]!;
    const { a, b } = model.linkOf(index);
    outOf[a]! += amps;
    outOf[b]! -= amps;
    balance.gapW -= amps * model.emf[index]!;
    if (kind[index] === KIND.converter) outputA[index] = 0 - amps;
    else branchA[index] = amps;
  }
  for (const index of sources) branchA[index] = 0 - branchA[index]!;
  const { known, network, areAllKnown } = model.assembly.networks();
  if (!areAllKnown) for (let node = 0; node < nodeV.length; node++) if (known[node] === 0) nodeV[node] = 0;
  blank.known.set(known);
  blank.network.set(network);
  blank.active.set(model.on);
  blank.pulledIn.set(pulledIn);
  const residualA = largest(outOf);
  const residualW = Math.abs(balance.gapW);
  if (!Number.isFinite(residualA + residualW)) return noSolution(model, inputW, { status: "no-convergence" });
  return { ...blank, status: "ok", residualA, residualW, conflict: [] };
}

/** A solution that says why there is none; where the iteration gave up, with how far it was off. */
export function noSolution(model: Model, inputW: Float64Array, why: Failure): Solution {
  const blank = blankSolution(model);
  let residualA = 0;
  if (why.status === "no-convergence") {
    const balance = new Balance(model, inputW, blank.nodeV, blank.branchA);
    balance.settle();
    residualA = Math.min(largest(balance.outOf), Number.MAX_VALUE);
    blank.nodeV.fill(0);
    blank.branchA.fill(0);
  }
  blank.network.fill(-1);
  return {
    ...blank,
    status: why.status,
    residualA,
    residualW: 0,
    conflict: why.status === "contradictory" ? why.conflict : [],
  };
}

type Failure = Exclude<RelayOutcome, { readonly status: "ok" }>;

type SolutionArrays = Pick<Solution, "nodeV" | "known" | "network" | "branchA" | "outputA" | "active" | "pulledIn">;

/** The arrays of a solution, all 0, side by side in one buffer: asking for memory once is a good part of a small solve. */
function blankSolution({ table, circuit }: Model): SolutionArrays {
  const { nodeCount, count } = table;
  const relays = circuit.relays.length;
  const buffer = new ArrayBuffer(8 * (nodeCount + 2 * count) + 4 * nodeCount + nodeCount + count + relays);
  const networkAt = 8 * (nodeCount + 2 * count);
  const knownAt = networkAt + 4 * nodeCount;
  return {
    nodeV: new Float64Array(buffer, 0, nodeCount),
    branchA: new Float64Array(buffer, 8 * nodeCount, count),
    outputA: new Float64Array(buffer, 8 * (nodeCount + count), count),
    network: new Int32Array(buffer, networkAt, nodeCount),
    known: new Uint8Array(buffer, knownAt, nodeCount),
    active: new Uint8Array(buffer, knownAt + nodeCount, count),
    pulledIn: new Uint8Array(buffer, knownAt + nodeCount + count, relays),
  };
}

/** Imbalance that is worth another digit: amps, and as a part of the largest current. */
const SHARPEN_FROM_A = 4e-12;
const SHARPEN_FROM = 2e-15;

/**
 * Currents by each branch's own law, and what is left over at nodes and of watts. Zero-ohm branches, whose currents only their
 * cluster tells, count as carrying none.
 */
class Balance {
  /** Amps that leave each node in all. */
  readonly outOf: Float64Array;
  /** Watts delivered by sources less watts used. */
  gapW = 0;
  private largestA = 0;
  private readonly model: Model;
  private readonly inputW: Float64Array;
  private readonly nodeV: Float64Array;
  private readonly flowA: Float64Array;

  /** Fills `nodeV` and `flowA` (amps a to b of each branch, 0 for what is off), which must be all 0. */
  constructor(model: Model, inputW: Float64Array, nodeV: Float64Array, flowA: Float64Array) {
    this.model = model;
    this.inputW = inputW;
    this.outOf = model.outOf;
    this.nodeV = nodeV;
    this.flowA = flowA;
    model.foldExtra();
    model.complete();
    nodeV.set(model.nodeV);
  }

  /**
   * In a few microohms the last bit of 12 V is already a thousandth of a microampere. So where currents don't balance well
   * enough, the volts get a second, small part that holds what no longer fits into the first. It also takes back what ties leak.
   */
  settle(): void {
    this.fill(null);
    const { assembly } = this.model;
    const correction = assembly.correction(this.outOf, Math.max(SHARPEN_FROM_A, SHARPEN_FROM * this.largestA));
    if (!correction) return;
    this.fill(correction);
    for (let node = 0; node < this.nodeV.length; node++) this.nodeV[node]! += correction[assembly.positionOf[node]!]!;
  }

  private fill(correction: Float64Array | null): void {
    const { flowA, outOf, model } = this;
    const { on, nodeV, emf, g } = model;
    const { a, b, kind, ohm, count } = model.table;
    const { positionOf } = model.assembly;
    let gapW = 0;
    let largestA = 0;
    outOf.fill(0);
    for (let i = 0; i < count; i++) {
      if (on[i] === 0) continue;
      const from = a[i]!;
      const to = b[i]!;
      let volts = nodeV[from]! - nodeV[to]! - emf[i]!;
      if (correction) volts += correction[positionOf[from]!]! - correction[positionOf[to]!]!;
      let amps: number;
      if (kind[i]! <= KIND.diode) {
        // Adding 0 turns the -0 of a zero-ohm branch, whose conductance stands at 0, into 0.
        amps = volts * g[i]! + 0;
        gapW -= amps * (emf[i]! + amps * ohm[i]!);
      } else {
        amps = this.drawA(i, volts);
        gapW -= this.usedW(i, volts, amps);
      }
      flowA[i] = amps;
      outOf[from]! += amps;
      outOf[to]! -= amps;
      if (amps > largestA) largestA = amps;
      else if (-amps > largestA) largestA = -amps;
    }
    this.gapW = gapW;
    this.largestA = largestA;
  }

  /** Amps of a load or a converter's input; `volts` are less the EMF, which of a converter is its output's. */
  private drawA(index: number, volts: number): number {
    const branch = this.model.table.branches[index]!;
    if (branch.type === "filament") return filamentA(branch, volts);
    if (branch.type === "power") return branch.watts / volts;
    if (branch.type === "current") return Math.sign(volts) * branch.amps;
    const watts = this.inputW[index]!;
    return watts === 0 ? 0 : watts / (volts + this.model.emf[index]!);
  }

  private usedW(index: number, volts: number, amps: number): number {
    const branch = this.model.table.branches[index]!;
    if (branch.type === "power") return branch.watts;
    return branch.type === "converter" ? this.inputW[index]! : volts * amps;
  }
}
