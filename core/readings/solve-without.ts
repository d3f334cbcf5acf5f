import type { Branch, Solution } from "../circuit/index.ts";
import { stateOf, type Combination, type Netlist } from "../netlist/index.ts";
import { createSolver, type Solver } from "../solver/index.ts";

const kept = new WeakMap<Netlist, Solver>();

/** The operating point with some wires cut (by number), all else as drawn: what happens when a ground is lost. */
export function solveWithout(netlist: Netlist, wires: readonly number[], combination: Combination): Solution {
  const state = stateOf(netlist, combination);
  for (const { branch } of netlist.wires) state.closed[branch] = 1;
  for (const wire of wires) state.closed[netlist.wires[wire]!.branch] = 0;
  return cuttingSolver(netlist).solve(state);
}

/** A solver to which every wire is a contact, so that each further cut costs only what it changes. */
function cuttingSolver(netlist: Netlist): Solver {
  let solver = kept.get(netlist);
  if (!solver) {
    const isWire = new Set(netlist.wires.map(({ branch }) => branch));
    const branches = netlist.circuit.branches.map((branch, index): Branch => {
      return isWire.has(index) && branch.type === "resistor" ? { ...branch, type: "contact" } : branch;
    });
    solver = createSolver({ ...netlist.circuit, branches });
    kept.set(netlist, solver);
  }
  return solver;
}
