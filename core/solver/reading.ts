/**
 * From a settled model to the solution handed out: amps by each branch's own law, networks, and how well it all balances.
 */
import type { Solution } from "../circuit/index.ts";
import { KIND } from "./branch-table.ts";
import { largest } from "./elimination.ts";
import { filamentA } from "./load-laws.ts";
import type { Model } from "./model.ts";

/** The solution of a settled model. */
export function readSolution(model: Model, inputW: Float64Array, pulledIn: Uint8Array): Solution {
  const { count, kind, zeroOhm, sources } = model.table;
  const balance = new Balance(model, inputW);
  const { flowA, outOf, nodeV } = balance;
  balance.settle();
  const outputA = new Float64Array(count);
  const rigidA = model.rigidFlows(outOf);
  for (const index of rigidA ? zeroOhm : []) {
    if (!model.isRigid(index)) continue;
    const amps = rigidA![index]!;
    const { a, b } = model.linkOf(index);
    outOf[a]! += amps;
    outOf[b]! -= amps;
    balance.gapW -= amps * model.emf[index]!;
    if (kind[index] === KIND.converter) outputA[index] = 0 - amps;
    else flowA[index] = amps;
  }
  const residualA = largest(outOf);
  for (const index of sources) flowA[index] = 0 - flowA[index]!;
  const { known, network } = model.assembly.networks();
  for (let node = 0; node < nodeV.length; node++) if (known[node] === 0) nodeV[node] = 0;
  const residualW = Math.abs(balance.gapW);
  const solution: Solution = {
    status: "ok",
    nodeV,
    known: known.slice(),
    network: network.slice(),
    branchA: flowA,
    outputA,
    active: model.on.slice(),
    pulledIn: pulledIn.slice(),
    residualA,
    residualW,
    conflict: [],
  };
  return Number.isFinite(residualA + residualW) ? solution : noSolution(model, "no-convergence", []);
}

/** A solution that says why there is none. */
export function noSolution(
  model: Model,
  status: Exclude<Solution["status"], "ok">,
  conflict: readonly number[],
): Solution {
  const { count, nodeCount } = model.table;
  return {
    status,
    nodeV: new Float64Array(nodeCount),
    known: new Uint8Array(nodeCount),
    network: new Int32Array(nodeCount).fill(-1),
    branchA: new Float64Array(count),
    outputA: new Float64Array(count),
    active: new Uint8Array(count),
    pulledIn: new Uint8Array(model.circuit.relays.length),
    residualA: 0,
    residualW: 0,
    conflict,
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
  /** Amps a to b of each branch; 0 for what is off. */
  readonly flowA: Float64Array;
  /** Amps that leave each node in all. */
  readonly outOf: Float64Array;
  readonly nodeV: Float64Array;
  /** Watts delivered by sources less watts used. */
  gapW = 0;
  private largestA = 0;
  private readonly model: Model;
  private readonly inputW: Float64Array;

  constructor(model: Model, inputW: Float64Array) {
    this.model = model;
    this.inputW = inputW;
    this.flowA = new Float64Array(model.table.count);
    this.outOf = model.outOf;
    this.nodeV = model.nodeV.slice();
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
    const { a, b, kind, ohm, isZeroOhm, count } = model.table;
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
      let amps = 0;
      if (kind[i]! > KIND.diode) {
        amps = this.drawA(i, volts);
        gapW -= this.usedW(i, volts, amps);
      } else if (isZeroOhm[i] === 0) {
        amps = volts * g[i]!;
        gapW -= amps * (emf[i]! + amps * ohm[i]!);
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
