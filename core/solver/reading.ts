/**
 * From a settled model to the solution handed out: amps by each branch's own law, networks, and how well it all balances.
 */
import type { Branch, Solution } from "../circuit/index.ts";
import { KIND } from "./branch-table.ts";
import { filamentA } from "./load-laws.ts";
import type { Model } from "./model.ts";

/** The solution of a settled model. */
export function readSolution(model: Model, inputW: Float64Array, pulledIn: Uint8Array): Solution {
  const { count, kind } = model.table;
  const nodeV = model.nodeV.slice();
  const branchA = balancedFlows(model, inputW, nodeV);
  const outputA = new Float64Array(count);
  const rigidA = model.rigidFlows(branchA);
  if (rigidA) {
    for (const index of model.table.zeroOhm) {
      if (kind[index] === KIND.converter) outputA[index] = 0 - rigidA[index]!;
      else if (model.isRigid(index)) branchA[index] = rigidA[index]!;
    }
  }
  const residualA = worstImbalance(model, branchA, outputA);
  const residualW = Math.abs(powerGap(model, branchA, outputA));
  for (const index of model.table.sources) branchA[index] = 0 - branchA[index]!;
  const { known, network } = model.assembly.networks();
  for (let node = 0; node < nodeV.length; node++) if (known[node] === 0) nodeV[node] = 0;
  const solution: Solution = {
    status: "ok",
    nodeV,
    known: known.slice(),
    network: network.slice(),
    branchA,
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

/** Imbalance (A) that is worth another digit. */
const SHARPEN_FROM_A = 4e-12;

/**
 * Amps a to b by each branch's law; 0 for what is off and for zero-ohm branches, whose currents their cluster tells.
 *
 * In a few microohms the last bit of 12 V is already a microampere's thousandth. So where currents don't balance well enough, the
 * volts get a second, small part that holds what no longer fits into the first. It also takes back what ties leak, so that
 * `nodeV`, which gets both, is off by rounding alone.
 */
function balancedFlows(model: Model, inputW: Float64Array, nodeV: Float64Array): Float64Array {
  const flowA = new Float64Array(model.table.count);
  fillFlows(model, inputW, flowA, null);
  const correction = model.assembly.correction(flowA, SHARPEN_FROM_A);
  if (correction) {
    fillFlows(model, inputW, flowA, correction);
    for (let node = 0; node < nodeV.length; node++) nodeV[node]! += correction[model.assembly.positionOf[node]!]!;
  }
  return flowA;
}

function fillFlows(model: Model, inputW: Float64Array, flowA: Float64Array, correction: Float64Array | null): void {
  const { on, nodeV, emf, g } = model;
  const { a, b, kind, count, branches } = model.table;
  const { positionOf } = model.assembly;
  for (let i = 0; i < count; i++) {
    if (on[i] === 0) continue;
    const from = a[i]!;
    const to = b[i]!;
    let volts = nodeV[from]! - nodeV[to]! - emf[i]!;
    if (correction) volts += correction[positionOf[from]!]! - correction[positionOf[to]!]!;
    if (kind[i]! <= KIND.diode) flowA[i] = volts * g[i]!;
    else if (kind[i] === KIND.converter) flowA[i] = inputW[i] === 0 ? 0 : inputW[i]! / (volts + emf[i]!);
    else flowA[i] = loadA(branches[i]!, volts);
  }
}

function loadA(branch: Branch, volts: number): number {
  if (branch.type === "filament") return filamentA(branch, volts);
  if (branch.type === "power") return branch.watts / volts;
  return branch.type === "current" ? Math.sign(volts) * branch.amps : 0;
}

function worstImbalance({ table }: Model, flowA: Float64Array, outputA: Float64Array): number {
  const { a, b, count, nodeCount, converters, branches } = table;
  const sum = new Float64Array(nodeCount);
  for (let i = 0; i < count; i++) {
    sum[a[i]!]! += flowA[i]!;
    sum[b[i]!]! -= flowA[i]!;
  }
  for (const index of converters) {
    const branch = branches[index]!;
    if (branch.type !== "converter") continue;
    sum[branch.outA]! -= outputA[index]!;
    sum[branch.outB]! += outputA[index]!;
  }
  let worst = 0;
  for (let node = 0; node < nodeCount; node++) worst = Math.max(worst, Math.abs(sum[node]!));
  return worst;
}

/** Watts delivered by sources and converter outputs less watts used, each by the branch's own law. */
function powerGap(model: Model, flowA: Float64Array, outputA: Float64Array): number {
  const { kind, ohm, count, branches } = model.table;
  let gap = 0;
  for (let i = 0; i < count; i++) {
    const amps = flowA[i]!;
    if (kind[i]! <= KIND.diode) gap -= amps * (model.emf[i]! + amps * ohm[i]!);
    else if (kind[i] === KIND.converter) gap -= amps * model.volts(i) - outputA[i]! * model.emf[i]!;
    else if (model.on[i] === 1) {
      const branch = branches[i]!;
      gap -= branch.type === "power" ? branch.watts : amps * model.volts(i);
    }
  }
  return gap;
}
