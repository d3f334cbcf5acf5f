/**
 * The DC operating point of a circuit: `createSolver` for many states of one circuit, `solveDc` for one.
 */
import type { Circuit, Solution, State } from "../circuit/index.ts";
import { checkCircuit, checkState } from "./check.ts";
import { Model } from "./model.ts";
import { settlePoint } from "./operating-point.ts";
import { noSolution, readSolution } from "./reading.ts";
import { settleRelays } from "./relays.ts";

export interface Solver {
  /** The operating point in this state; the same, bit for bit, whatever was solved before. */
  solve(state: State): Solution;
}

export function createSolver(circuit: Circuit): Solver {
  checkCircuit(circuit);
  const model = new Model(circuit);
  const inputW = new Float64Array(circuit.branches.length);
  const pulledIn = new Uint8Array(circuit.relays.length);
  return {
    solve(state: State): Solution {
      checkState(circuit, state);
      applyState(model, state);
      const outcome = settleRelays(model, pulledIn, () => settlePoint(model, inputW));
      if (outcome.status === "ok") return readSolution(model, inputW, pulledIn);
      return noSolution(model, outcome.status, outcome.status === "contradictory" ? outcome.conflict : []);
    },
  };
}

/** The operating point of a circuit in one state. */
export function solveDc(circuit: Circuit, state: State): Solution {
  return createSolver(circuit).solve(state);
}

function applyState(model: Model, state: State): void {
  model.circuit.branches.forEach((branch, index) => {
    if (branch.type === "source") {
      model.setEmf(index, state.sourceV === null ? branch.volts : state.sourceV[index]!);
      model.set(index, state.closed[index] === 1);
    } else if (branch.type === "contact") model.set(index, state.closed[index] === 1);
  });
}
