import type { Branch, Solution } from "../circuit/index.ts";
import { stateOf, type Combination, type NetElement, type Netlist, type NetPart } from "../netlist/index.ts";
import type { Load } from "../parts/index.ts";
import { solveDc } from "../solver/index.ts";
import { ampsThrough, voltsBetween } from "./part-reading.ts";
import type { PartReading } from "./types.ts";

/**
 * Adds what a motor or load takes while it starts, for one that is on: solved with it as its start resistance (or drawing its
 * start amps) and all else as in this combination.
 */
export function withStarts(
  netlist: Netlist,
  part: NetPart,
  combination: Combination,
  settled: Solution,
  reading: PartReading,
): PartReading {
  const element = part.elements.find(({ spec }) => spec.type === "load" && spec.start !== null);
  if (!element || reading.on !== true) return reading;
  const solution = startSolution(netlist, element, combination, settled);
  if (!solution) return reading;
  if (solution.status !== "ok") return { ...reading, startAmps: null, startVolts: null };
  return {
    ...reading,
    startAmps: ampsThrough(solution, element),
    startVolts: voltsBetween(solution, element.a, element.b),
  };
}

const kept = new WeakMap<Solution, Map<number, Solution | null>>();

/**
 * The operating point in the moment this motor or load starts, all else and every relay as settled. `null` for one whose start
 * nobody stated; without status "ok" it says nothing.
 */
export function startSolution(
  netlist: Netlist,
  element: NetElement,
  combination: Combination,
  settled: Solution,
): Solution | null {
  const known = kept.get(settled) ?? new Map<number, Solution | null>();
  kept.set(settled, known);
  let solution = known.get(element.index);
  if (solution === undefined) {
    solution = solveStart(netlist, element, combination, settled);
    known.set(element.index, solution);
  }
  return solution;
}

function solveStart(
  netlist: Netlist,
  element: NetElement,
  combination: Combination,
  settled: Solution,
): Solution | null {
  const starting = element.branch < 0 ? null : startBranch(element);
  if (!starting) return null;
  const branches = netlist.circuit.branches.map((branch, index) => (index === element.branch ? starting : branch));
  return solveDc({ ...netlist.circuit, branches, relays: [] }, heldState(netlist, combination, settled));
}

function startBranch({ spec, a, b }: NetElement): Branch | null {
  const { start, polarised } = spec as Load;
  if (start?.ohm != null) return { type: "resistor", a, b, ohm: start.ohm };
  if (start?.amps != null) return { type: "current", a, b, amps: start.amps, eitherWay: !polarised };
  return null;
}

/** Relays held where they stood: the start lasts a moment and is measured before any could let go. */
function heldState(netlist: Netlist, combination: Combination, settled: Solution) {
  const state = stateOf(netlist, combination);
  for (const { branch, coil } of netlist.elements) {
    if (coil >= 0 && branch >= 0) state.closed[branch] = settled.active[branch]!;
  }
  return state;
}
