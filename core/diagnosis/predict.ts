import type { Solution } from "../circuit/index.ts";
import type { TakenReading } from "../document/index.ts";
import { combinationOf, restCombination, type Combination, type Netlist } from "../netlist/index.ts";
import { REST, solveCombination, voltsBetween } from "../readings/index.ts";

/** What a reading would show on some net; `null`: that net does not settle, or the reading is of something it does not have. */
export type Predict = (reading: TakenReading) => number | null;

/** Readings foretold by solving the net, each situation once. A lead on metal that floats shows nothing: 0 V. */
export function predictorOf(netlist: Netlist): Predict {
  const solutions = new Map<string, Solution | null>();
  const solved = (situation: string): Solution | null => {
    const known = solutions.get(situation);
    if (known !== undefined) return known;
    const combination = combinationFor(netlist, situation);
    const solution = combination === null ? null : solveCombination(netlist, combination);
    const settled = solution?.status === "ok" ? solution : null;
    solutions.set(situation, settled);
    return settled;
  };
  return (reading) => {
    if (reading.meter === "ohm") return ohmsOf(netlist, reading);
    const solution = solved(reading.situation);
    if (solution === null) return null;
    return reading.meter === "A" ? ampsOf(netlist, solution, reading.red) : voltsOf(netlist, solution, reading);
  };
}

function combinationFor(netlist: Netlist, situation: string): Combination | null {
  if (situation === REST) return restCombination(netlist);
  const declared = netlist.document.situations?.find(({ id }) => id === situation);
  return declared ? combinationOf(netlist, declared.set ?? {}) : null;
}

function voltsOf(netlist: Netlist, solution: Solution, { red, black }: TakenReading): number | null {
  const plus = netlist.terminalAt.get(red)?.node;
  if (plus === undefined) return null;
  if (black === undefined) return solution.known[plus] === 1 ? solution.nodeV[plus]! : 0;
  const minus = netlist.terminalAt.get(black)?.node;
  return minus === undefined ? null : (voltsBetween(solution, plus, minus) ?? 0);
}

/** Amps through a device or a wire, by size: nobody minds which way round a clamp was held. */
function ampsOf(netlist: Netlist, solution: Solution, at: string): number | null {
  const device = netlist.elements.find(
    ({ spec, part }) =>
      spec.type === "protection" && at === (spec.terminal === "" ? part.part.id : `${part.part.id}.${spec.terminal}`),
  );
  const branch = device?.branch ?? netlist.wireAt.get(at)?.branch;
  if (branch === undefined) return null;
  return branch < 0 ? 0 : Math.abs(solution.branchA[branch]!);
}

/** End to end of one wire, taken off what it joins. */
function ohmsOf(netlist: Netlist, { red, black }: TakenReading): number | null {
  const wire = netlist.wires.find(({ from, to }) => from.address === red && to.address === black);
  const branch = wire && netlist.circuit.branches[wire.branch];
  if (!branch) return null;
  if (branch.type === "contact") return OPEN_OHM;
  return "ohm" in branch ? branch.ohm : null;
}

/** As good as open, and still a number to compare with. */
const OPEN_OHM = 1e7;
