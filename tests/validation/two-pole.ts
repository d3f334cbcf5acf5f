import type { Branch, Circuit } from "../../core/circuit/index.ts";
import { solveDc } from "../../core/solver/index.ts";

/**
 * What the solver says of one loop: a source of `volts` behind `sourceOhm`, a conductor of `lineOhm` for the whole way out
 * and back, and a load across nodes 1 and 0.
 */
export function loop(volts: number, lineOhm: number, load: Branch, sourceOhm = 0) {
  const source: Branch = { type: "source", a: 2, b: 0, volts, ohm: sourceOhm };
  const line: Branch = { type: "resistor", a: 2, b: 1, ohm: lineOhm };
  const branches = [source, line, load];
  const circuit: Circuit = { nodeCount: 3, branches, relays: [], references: [0] };
  const { nodeV, branchA } = solveDc(circuit, { closed: new Uint8Array(branches.length).fill(1), sourceV: null });
  const at = (node: number) => nodeV[node] ?? Number.NaN;
  return {
    amps: branchA[2] ?? Number.NaN,
    loadV: at(1) - at(0),
    sourceV: at(2) - at(0),
    dropV: at(2) - at(1),
    loadW: (at(1) - at(0)) * (branchA[2] ?? Number.NaN),
  };
}

export function resistorLoad(ohm: number): Branch {
  return { type: "resistor", a: 1, b: 0, ohm };
}

export function currentLoad(amps: number): Branch {
  return { type: "current", a: 1, b: 0, amps, eitherWay: false };
}

export function powerLoad(watts: number): Branch {
  return { type: "power", a: 1, b: 0, watts, minV: null, maxV: null, eitherWay: false };
}

export function filamentLoad(watts: number, ratedV: number): Branch {
  return { type: "filament", a: 1, b: 0, watts, ratedV };
}
