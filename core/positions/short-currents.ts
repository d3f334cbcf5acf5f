import type { Branch, Circuit, State } from "../circuit/index.ts";
import { solveDc } from "../solver/index.ts";

/** Amps of a dead short from each node to the zero of its network, one solve a node; -1 where nothing drives one. */
export function shortCurrents(circuit: Circuit, state: State, leftOut: Uint8Array): Float64Array {
  const branches = circuit.branches.map((branch, index): Branch => {
    return leftOut[index] === 1 ? { type: "contact", a: branch.a, b: branch.b, ohm: 1 } : branch;
  });
  const bare = { ...circuit, branches, relays: [] };
  const open = solveDc(bare, state);
  const withShort: State = {
    closed: Uint8Array.of(...state.closed, 1),
    sourceV: state.sourceV && Float64Array.of(...state.sourceV, 0),
  };
  return Float64Array.from({ length: circuit.nodeCount }, (_, node) => {
    const zero = circuit.references.find((reference) => open.network[reference] === open.network[node]);
    if (open.known[node] !== 1 || zero === undefined || open.nodeV[node]! <= 1e-6) return -1;
    const shorted = [...branches, { type: "resistor" as const, a: node, b: zero, ohm: 1e-9 }];
    const solution = solveDc({ ...bare, branches: shorted }, withShort);
    return solution.status === "ok" ? Math.abs(solution.branchA[branches.length]!) : -1;
  });
}
