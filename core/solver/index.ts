/**
 * The DC operating point of a circuit: `createSolver` for many states of one circuit, `solveDc` for one.
 */
import type { Circuit, Solution, State } from "../circuit/index.ts";
import { checkCircuit, checkState } from "./check.ts";
import { Model } from "./model.ts";
import { settlePoint } from "./operating-point.ts";
import { noSolution, readSolution } from "./reading.ts";
import { moveContacts, settleRelays } from "./relays.ts";
import { NO_SHORT_A, shortCurrents, shortModel, takeOut } from "./short-currents.ts";

export interface Solver {
  /** The operating point in this state; the same, bit for bit, whatever was solved before. */
  solve(state: State): Solution;
  /**
   * Amps of a dead short from each node to the zero of its network, loads and converters absent, diodes in the way counted;
   * -1 where no source reaches, where there is no zero, where no resistance would limit it, and everywhere when the
   * circuit has no settled state.
   */
  shortCurrents(state: State, options?: ShortOptions): Float64Array;
}

export interface ShortOptions {
  /** 1 for each branch to take out as well: coils, plain resistances a fault current would not get past. */
  readonly leaveOut?: Uint8Array;
  /** Position of each relay; left out, as solved for this state. */
  readonly pulledIn?: Uint8Array;
}

export function createSolver(circuit: Circuit): Solver {
  checkCircuit(circuit);
  const model = new Model(circuit);
  const inputW = new Float64Array(circuit.branches.length);
  const pulledIn = new Uint8Array(circuit.relays.length);
  let shorts: Model | null = null;
  const solver: Solver = {
    solve(state: State): Solution {
      checkState(circuit, state);
      applyState(model, state);
      const outcome = settleRelays(model, pulledIn, () => settlePoint(model, inputW));
      if (outcome.status === "ok") return readSolution(model, inputW, pulledIn);
      return noSolution(model, outcome.status, outcome.status === "contradictory" ? outcome.conflict : []);
    },
    shortCurrents(state: State, { leaveOut, pulledIn: given }: ShortOptions = {}): Float64Array {
      checkState(circuit, state);
      const positions = given ?? relayPositions(solver, circuit, state);
      if (positions === null) return new Float64Array(circuit.nodeCount).fill(NO_SHORT_A);
      shorts ??= shortModel(circuit);
      takeOut(shorts, leaveOut ?? null);
      applyState(shorts, state);
      moveContacts(shorts, positions);
      return shortCurrents(shorts);
    },
  };
  return solver;
}

/** The operating point of a circuit in one state. */
export function solveDc(circuit: Circuit, state: State): Solution {
  return createSolver(circuit).solve(state);
}

function relayPositions(solver: Solver, circuit: Circuit, state: State): Uint8Array | null {
  if (circuit.relays.length === 0) return new Uint8Array(0);
  const { status, pulledIn } = solver.solve(state);
  return status === "ok" ? pulledIn : null;
}

function applyState(model: Model, { closed, sourceV }: State): void {
  const { sources, contacts, branches } = model.table;
  for (const index of contacts) model.set(index, closed[index] === 1);
  for (const index of sources) {
    const branch = branches[index]!;
    if (branch.type === "source") model.setEmf(index, sourceV === null ? branch.volts : sourceV[index]!);
    model.set(index, closed[index] === 1);
  }
}
