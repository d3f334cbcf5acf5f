/**
 * From a settled model to the solution handed out: amps by each branch's own law, networks, and how well it all balances.
 */
import type { Solution } from "../circuit/index.ts";
import { KIND } from "./branch-table.ts";
import { filamentA } from "./load-laws.ts";
import type { Model } from "./model.ts";

/** The solution of a settled model. */
export function readSolution(model: Model, inputW: Float64Array, pulledIn: Uint8Array): Solution {
  const { count, kind } = model.table;
  const branchA = flowsByLaw(model, inputW);
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
  const { known, network } = networksOf(model);
  const nodeV = model.nodeV.slice();
  for (let node = 0; node < nodeV.length; node++) if (known[node] === 0) nodeV[node] = 0;
  const solution: Solution = {
    status: "ok",
    nodeV,
    known,
    network,
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

/** Amps a to b by each branch's law; 0 for what is off and for a zero-ohm branch, whose current its cluster tells. */
function flowsByLaw(model: Model, inputW: Float64Array): Float64Array {
  const { on, nodeV, emf } = model;
  const { a, b, kind, ohm, isZeroOhm, count, branches } = model.table;
  const flowA = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    if (on[i] === 0) continue;
    const volts = nodeV[a[i]!]! - nodeV[b[i]!]!;
    if (kind[i]! <= KIND.diode) {
      if (isZeroOhm[i] === 0) flowA[i] = (volts - emf[i]!) / ohm[i]!;
    } else if (kind[i] === KIND.converter) flowA[i] = inputW[i] === 0 ? 0 : inputW[i]! / volts;
    else {
      const branch = branches[i]!;
      if (branch.type === "filament") flowA[i] = filamentA(branch, volts);
      else if (branch.type === "power") flowA[i] = branch.watts / volts;
      else if (branch.type === "current") flowA[i] = Math.sign(volts) * branch.amps;
    }
  }
  return flowA;
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

/** Networks numbered by their first node; known where the network holds a zero. */
function networksOf(model: Model): { known: Uint8Array; network: Int32Array } {
  const { elimination, positionOf, zeroAt } = model.assembly;
  const endsAt = elimination.networkEnds();
  const numberOf = new Int32Array(zeroAt.length).fill(-1);
  const known = new Uint8Array(positionOf.length);
  const network = new Int32Array(positionOf.length);
  let networks = 0;
  for (let node = 0; node < network.length; node++) {
    const end = endsAt[positionOf[node]!]!;
    if (zeroAt[end]! < 0) network[node] = -1;
    else {
      if (numberOf[end] === -1) numberOf[end] = networks++;
      known[node] = 1;
      network[node] = numberOf[end]!;
    }
  }
  return { known, network };
}
