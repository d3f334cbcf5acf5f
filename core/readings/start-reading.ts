import type { Branch, Solution } from "../circuit/index.ts";
import { stateOf, type Combination, type NetElement, type Netlist, type NetPart } from "../netlist/index.ts";
import { createSolver, type Solver } from "../solver/index.ts";
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
  const bench = benchOf(netlist);
  const extra = bench.extraOf.get(element.index);
  if (extra === undefined) return null;
  const count = netlist.circuit.branches.length + bench.extraOf.size;
  const held = heldState(netlist, combination, settled);
  const closed = new Uint8Array(count);
  closed.set(held.closed);
  // Running or starting: of each pair one draws, be it a contact of some resistance or a load.
  for (const branch of bench.running) closed[branch] = 1;
  closed[element.branch] = 0;
  closed[extra] = 1;
  const idle = new Uint8Array(count).fill(1, netlist.circuit.branches.length);
  idle[extra] = 0;
  idle[element.branch] = 1;
  const sourceV = new Float64Array(count);
  sourceV.set(held.sourceV!);
  const solution = bench.solver.solve({ closed, sourceV, idle });
  solution.branchA[element.branch] = solution.branchA[extra]!;
  solution.active[element.branch] = solution.active[extra]!;
  return solution;
}

/** A solver of the net with every load that has a start drawn twice: as it runs, and as it starts. */
interface StartBench {
  readonly solver: Solver;
  /** By element number, the branch of the load as it starts. */
  readonly extraOf: ReadonlyMap<number, number>;
  /** The branches of the same loads as they run. */
  readonly running: ReadonlySet<number>;
}

const benches = new WeakMap<Netlist, StartBench>();

function benchOf(netlist: Netlist): StartBench {
  let bench = benches.get(netlist);
  if (!bench) {
    const branches: Branch[] = [...netlist.circuit.branches];
    const extraOf = new Map<number, number>();
    const running = new Set<number>();
    for (const element of netlist.elements) {
      const starting = element.branch < 0 ? null : startBranch(element);
      if (!starting) continue;
      extraOf.set(element.index, branches.push(starting) - 1);
      running.add(element.branch);
      const runs = branches[element.branch]!;
      if (runs.type === "resistor") branches[element.branch] = { ...runs, type: "contact" };
    }
    bench = { solver: createSolver({ ...netlist.circuit, branches, relays: [] }), extraOf, running };
    benches.set(netlist, bench);
  }
  return bench;
}

function startBranch({ spec, a, b }: NetElement): Branch | null {
  if (spec.type !== "load" || spec.start === null) return null;
  const { start, polarised } = spec;
  if (start.ohm !== null) return { type: "contact", a, b, ohm: start.ohm };
  if (start.amps !== null) return { type: "current", a, b, amps: start.amps, eitherWay: !polarised };
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
