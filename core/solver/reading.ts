/**
 * From a settled model to the solution handed out: amps by each branch's own law, networks, and how well it all balances.
 */
import type { Solution } from "../circuit/index.ts";
import { filamentA } from "./load-laws.ts";
import type { Model } from "./model.ts";

/** The solution of a settled model. */
export function readSolution(model: Model, inputW: Float64Array, pulledIn: Uint8Array): Solution {
  const { branches } = model.circuit;
  const flowA = Float64Array.from(branches, (_, index) => flowOf(model, inputW, index));
  const rigidA = model.rigidFlows(flowA);
  const outputA = new Float64Array(branches.length);
  if (rigidA) {
    branches.forEach((branch, index) => {
      if (!model.isRigid(index)) return;
      if (branch.type === "converter") outputA[index] = -rigidA[index]!;
      else flowA[index] = rigidA[index]!;
    });
  }
  const residualA = worstImbalance(model, flowA, outputA);
  const residualW = Math.abs(powerGap(model, flowA, outputA));
  const branchA = Float64Array.from(flowA, (amps, index) => (branches[index]!.type === "source" ? -amps : amps) + 0);
  const { known, network } = networksOf(model);
  const nodeV = model.nodeV.map((volts, node) => (known[node] ? volts + 0 : 0));
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
  const isFinite =
    Number.isFinite(residualA + residualW) && nodeV.every(Number.isFinite) && branchA.every(Number.isFinite);
  return isFinite ? solution : noSolution(model, "no-convergence", []);
}

/** A solution that says why there is none. */
export function noSolution(
  model: Model,
  status: Exclude<Solution["status"], "ok">,
  conflict: readonly number[],
  residualA = 0,
): Solution {
  const { nodeCount, branches, relays } = model.circuit;
  return {
    status,
    nodeV: new Float64Array(nodeCount),
    known: new Uint8Array(nodeCount),
    network: new Int32Array(nodeCount).fill(-1),
    branchA: new Float64Array(branches.length),
    outputA: new Float64Array(branches.length),
    active: new Uint8Array(branches.length),
    pulledIn: new Uint8Array(relays.length),
    residualA,
    residualW: 0,
    conflict,
  };
}

/** Amps a to b by the branch's law; 0 for what is off and for a zero-ohm branch, whose current its cluster tells. */
function flowOf(model: Model, inputW: Float64Array, index: number): number {
  const branch = model.circuit.branches[index]!;
  if (!model.on[index]) return 0;
  if (branch.type === "converter") return inputW[index] === 0 ? 0 : inputW[index]! / model.volts(index);
  if (model.isRigid(index)) return 0;
  const volts = model.volts(index);
  switch (branch.type) {
    case "resistor":
    case "contact":
      return volts / branch.ohm;
    case "source":
    case "diode":
      return (volts - model.emf[index]!) / branch.ohm;
    case "filament":
      return filamentA(branch, volts);
    case "power":
      return branch.watts / volts;
    case "current":
      return Math.sign(volts) * branch.amps;
    default:
      return branch satisfies never;
  }
}

function worstImbalance(model: Model, flowA: Float64Array, outputA: Float64Array): number {
  const sum = new Float64Array(model.circuit.nodeCount);
  model.circuit.branches.forEach((branch, index) => {
    sum[branch.a]! += flowA[index]!;
    sum[branch.b]! -= flowA[index]!;
    if (branch.type === "converter") {
      sum[branch.outA]! -= outputA[index]!;
      sum[branch.outB]! += outputA[index]!;
    }
  });
  return sum.reduce((worst, amps) => Math.max(worst, Math.abs(amps)), 0);
}

/** Watts delivered by sources and converter outputs less watts used, each by the branch's own law. */
function powerGap(model: Model, flowA: Float64Array, outputA: Float64Array): number {
  let gap = 0;
  model.circuit.branches.forEach((branch, index) => {
    const amps = flowA[index]!;
    switch (branch.type) {
      case "resistor":
      case "contact":
        gap -= amps ** 2 * branch.ohm;
        break;
      case "source":
      case "diode":
        gap -= amps * model.emf[index]! + amps ** 2 * branch.ohm;
        break;
      case "power":
        gap -= model.on[index] ? branch.watts : 0;
        break;
      case "filament":
      case "current":
        gap -= amps * model.volts(index);
        break;
      case "converter":
        gap -= amps * model.volts(index) - outputA[index]! * branch.volts;
        break;
      default:
        branch satisfies never;
    }
  });
  return gap;
}

/** Networks numbered by their first node; known where the network holds a zero. */
function networksOf(model: Model): { known: Uint8Array; network: Int32Array } {
  const { elimination, positionOf, zeroAt } = model.assembly;
  const endsAt = elimination.networkEnds();
  const numberOf = new Int32Array(zeroAt.length).fill(-1);
  let networks = 0;
  const known = new Uint8Array(positionOf.length);
  const network = Int32Array.from(positionOf, (position, node) => {
    const end = endsAt[position]!;
    if (zeroAt[end]! < 0) return -1;
    known[node] = 1;
    if (numberOf[end] === -1) numberOf[end] = networks++;
    return numberOf[end]!;
  });
  return { known, network };
}
