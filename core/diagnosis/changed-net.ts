import type { Branch } from "../circuit/index.ts";
import type { Netlist } from "../netlist/index.ts";

/** The net with so many ohms more in one branch: a poor crimp, a burnt contact, a loose stud, a tired battery. */
export function withExtraOhm(netlist: Netlist, branch: number, extraOhm: number): Netlist {
  const before = netlist.circuit.branches[branch];
  if (!before || !("ohm" in before)) return netlist;
  return withBranch(netlist, branch, { ...before, ohm: before.ohm + extraOhm });
}

/** The net with a source that stands so many volts higher, at rest and while the engine runs. */
export function withExtraVolts(netlist: Netlist, branch: number, extraV: number): Netlist {
  const elements = netlist.elements.map((element) => {
    const { spec } = element;
    if (element.branch !== branch || spec.type !== "source") return element;
    return { ...element, spec: { ...spec, restV: spec.restV + extraV, runningV: spec.runningV + extraV } };
  });
  // A circuit of its own makes it another net to whoever keeps solvers by net.
  return { ...netlist, elements, circuit: { ...netlist.circuit } };
}

function withBranch(netlist: Netlist, branch: number, after: Branch): Netlist {
  const branches = [...netlist.circuit.branches];
  branches[branch] = after;
  return { ...netlist, circuit: { ...netlist.circuit, branches } };
}
