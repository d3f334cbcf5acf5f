import { restCombination, stateOf, type Netlist } from "../netlist/index.ts";
import { createSolver } from "../solver/index.ts";
import type { Conduction } from "./conduction.ts";
import { isFixed } from "./circuits.ts";

/**
 * Amps of a dead short from each node to battery negative, in the combination that gives most; -1 where no source drives one.
 * Sources stand at their rest volts; loads, coils with what suppresses them, what a feed already serves, and converters are off.
 * `cases`: how the groups can stand together, one way for each group.
 */
export function faultCurrents(netlist: Netlist, cases: readonly (readonly Conduction[])[]): Float64Array {
  const leftOut = new Uint8Array(netlist.circuit.branches.length);
  for (const { spec, branch } of netlist.elements) {
    const isOff = spec.type === "load" || spec.type === "coil" || spec.type === "converter";
    if (branch >= 0 && (isOff || (spec.type === "diode" && spec.suppresses !== undefined))) leftOut[branch] = 1;
  }
  // Relays stand as each case says, not as a solve without their coils would leave them.
  const solver = createSolver({ ...netlist.circuit, relays: [] });
  const worst = new Float64Array(netlist.nodeCount).fill(-1);
  for (const conductions of cases) {
    const amps = solver.shortCurrents(faultState(netlist, conductions), { leaveOut: leftOut });
    for (let node = 0; node < worst.length; node++) worst[node] = Math.max(worst[node]!, amps[node]!);
  }
  return worst;
}

function faultState(netlist: Netlist, conductions: readonly Conduction[]) {
  const state = stateOf(netlist, restCombination(netlist), true);
  for (const element of netlist.elements) {
    const { spec, branch } = element;
    if (branch >= 0 && !isFixed(element) && (spec.type === "contact" || spec.type === "source"))
      state.closed[branch] = 0;
  }
  for (const { spec, branch } of netlist.elements)
    if (spec.type === "source" && spec.when === null) state.closed[branch] = 1;
  for (const conduction of conductions) for (const branch of conduction) state.closed[branch] = 1;
  return state;
}
