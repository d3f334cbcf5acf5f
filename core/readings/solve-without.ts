import type { Branch, Solution } from "../circuit/index.ts";
import { stateOf, type Combination, type Netlist } from "../netlist/index.ts";
import { solveDc } from "../solver/index.ts";

/** The operating point with some wires cut (by number), all else as drawn: what happens when a ground is lost. */
export function solveWithout(netlist: Netlist, wires: readonly number[], combination: Combination): Solution {
  const cut = new Set(wires.map((wire) => netlist.wires[wire]!.branch));
  const branches = netlist.circuit.branches.map((branch, index): Branch => {
    if (!cut.has(index)) return branch;
    return { type: "contact", a: branch.a, b: branch.b, ohm: 0 };
  });
  return solveDc({ ...netlist.circuit, branches }, stateOf(netlist, combination));
}
