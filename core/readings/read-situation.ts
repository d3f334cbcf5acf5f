import type { Solution } from "../circuit/index.ts";
import {
  combinationOf,
  restCombination,
  stateOf,
  type Combination,
  type Netlist,
  type NetWire,
} from "../netlist/index.ts";
import { createSolver, type Solver } from "../solver/index.ts";
import { feedVolts, type FeedVolts } from "./feed-volts.ts";
import { readPart, voltsBetween } from "./part-reading.ts";
import { withStarts } from "./start-reading.ts";
import type { PartReading, SituationReading, WireReading } from "./types.ts";

export const REST = "rest";

const solvers = new WeakMap<Netlist, Solver>();

/** The solver of a net, kept as long as the net is, so that each further combination costs only what changed. */
export function solverOf(netlist: Netlist): Solver {
  let solver = solvers.get(netlist);
  if (!solver) {
    solver = createSolver(netlist.circuit);
    solvers.set(netlist, solver);
  }
  return solver;
}

/** The operating point with the controls as given. */
export function solveCombination(netlist: Netlist, combination: Combination): Solution {
  return solverOf(netlist).solve(stateOf(netlist, combination));
}

/** `rest` first, then every declared situation, each solved and read off. */
export function readSituations(netlist: Netlist): SituationReading[] {
  const declared = netlist.document.situations ?? [];
  const rest = declared.find(({ id }) => id === REST);
  return [
    readSituation(netlist, restCombination(netlist), REST, rest?.name ?? "Everything at rest"),
    ...declared
      .filter(({ id }) => id !== REST)
      .map(({ id, name, set }) => readSituation(netlist, combinationOf(netlist, set ?? {}), id, name ?? id)),
  ];
}

/** One combination of the controls, solved and read off at every terminal, wire and part. */
export function readSituation(netlist: Netlist, combination: Combination, id: string, name: string): SituationReading {
  const solution = solveCombination(netlist, combination);
  const settled = solution.status === "ok";
  const volts = settled ? feedVolts(netlist, combination, solution) : noFeed(netlist);
  const { feedV } = volts;
  const parts: Record<string, PartReading> = {};
  for (const part of netlist.parts) {
    const reading = readPart(part, solution, feedV);
    parts[part.part.id] = settled ? withStarts(netlist, part, combination, solution, reading) : unsettled(reading);
  }
  const wires: Record<string, WireReading> = {};
  for (const wire of netlist.wires) wires[wire.wire.id] = readWire(wire, solution, settled, volts);
  return {
    id,
    name,
    combination,
    solution,
    settled,
    residualA: settled ? solution.residualA : null,
    terminals: readTerminals(netlist, solution, settled),
    wires,
    parts,
    feedV,
  };
}

function readTerminals(netlist: Netlist, { known, nodeV }: Solution, settled: boolean): SituationReading["terminals"] {
  const terminals: Record<string, { volts: number | null }> = {};
  for (const { address, node } of netlist.terminals) {
    terminals[address] = { volts: settled && known[node] === 1 ? nodeV[node]! : null };
  }
  return terminals;
}

function noFeed({ nodeCount }: Netlist): FeedVolts {
  return { feedV: new Float64Array(nodeCount), returnV: new Float64Array(nodeCount) };
}

function readWire(wire: NetWire, solution: Solution, settled: boolean, { feedV, returnV }: FeedVolts): WireReading {
  if (!settled) return { amps: null, dropV: null, dropPercent: null };
  const amps = solution.branchA[wire.branch]!;
  const dropV = wire.known ? (voltsBetween(solution, wire.from.node, wire.to.node) ?? 0) : null;
  const { from, to } = wire;
  const sourceV = returnV[amps > 0 ? from.node : to.node] || Math.max(feedV[from.node]!, feedV[to.node]!);
  return { amps, dropV, dropPercent: dropV === null || sourceV === 0 ? null : (dropV / sourceV) * 100 };
}

/** Where nothing settles no number says anything: every value is `null`, the keys stay. */
function unsettled(reading: PartReading): PartReading {
  return Object.fromEntries(
    Object.entries(reading).map(([key, value]) => [
      key,
      key === "ways" ? Object.fromEntries(Object.keys(value as object).map((way) => [way, { amps: null }])) : null,
    ]),
  );
}
