/**
 * The DC operating point of a circuit: `createSolver` for many states of one circuit, `solveDc` for one.
 *
 * How a solve goes, from the outside in, with the file that tells the rest:
 *
 *   relays.ts            from all released, every relay moves at once until none moves, or they chase one another ("chatter")
 *   operating-point.ts     all loads and converters start on; those without volts, out of range or without a solution drop out
 *   loads.ts                 draws of constant power, constant current and filaments, by iteration from the open circuit down
 *   diodes.ts                  which diodes conduct, for the draws as they are
 *   model.ts                     the circuit at that moment, every branch a straight line: current = g (va - vb) + h
 *   assembly.ts                    branches onto the edges of a graph whose vertices are clusters.ts of nodes without resistance between
 *   elimination.ts                   volts by star-mesh elimination, in the order of ordering.ts
 *   reading.ts           amps by each element's own law, networks and residuals; rigid-flows.ts for zero-ohm branches
 *   short-currents.ts    the other question: what a dead short at each node would draw
 *
 * Why so. A matrix of conductances subtracts what star-mesh never does, and with copper beside open lamps (fifteen powers of ten)
 * it loses whole volts on floating parts; star-mesh is exact to the last bits. Vehicle circuits are nearly trees, so their elimination is
 * nearly linear. The plan is made once for all contacts and sources, open or closed; flicking one changes values on one path to the root,
 * gathered again in the very order of a fresh solve. That is why a kept solver and a fresh one agree bit for bit: nothing carries over
 * but values that are functions of the state. For the same reason loads, diodes and relays start from the same place in every solve.
 *
 * Ideal means ideal: 0 ohm is one node in two places (its current follows from what the rest takes), and ideal sources that
 * disagree are reported, not averaged. A load that draws nothing and a blocking diode tie their ends by 1e-12 S, as a meter would,
 * so that a floating end has the volts one would read there; reported amps leave that leakage out.
 *
 * Signs and units as in `circuit`. Accuracy: volts within 2e-14 V of exact arithmetic on vehicle-like circuits, currents balanced within
 * 1e-11 A; `residualA` and `residualW` tell for each solution. Cost: see `npm run bench`.
 */
import type { Circuit, Solution, State } from "../circuit/index.ts";
import { checkCircuit, checkState } from "./check.ts";
import { Model } from "./model.ts";
import { settlePoint } from "./operating-point.ts";
import { noSolution, readSolution } from "./reading.ts";
import { moveContacts, settleRelays } from "./relays.ts";
import { NO_SHORT_A, shortCurrents, shortModel, takeOut } from "./short-currents.ts";

/** A circuit made ready to be solved in many states. What it hands out is the caller's to keep. */
export interface Solver {
  /**
   * The operating point in this state; the same, bit for bit, whatever was solved before. Without one, `status` says why.
   * Throws RangeError when the state doesn't fit the circuit.
   */
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

/** Makes a circuit ready to be solved. Throws RangeError when a branch, relay or reference can't be (negative ohms, no such node). */
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
      const outcome = settleRelays(model, pulledIn, () => settlePoint(model, inputW, state.idle));
      if (outcome.status === "ok") return readSolution(model, inputW, pulledIn);
      return noSolution(model, inputW, outcome);
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

/** The operating point of a circuit in one state: what a fresh solver gives. */
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
