import type { Circuit, Solution } from "../../core/circuit/index.ts";
import { solveDc } from "../../core/solver/index.ts";
import { Wiring } from "../solver/wiring.ts";

/** Volts behind which a current source stands here: what it then loses to 24 V is 2e-5 of its current. */
const STIFF_V = 1e6;

interface Read {
  readonly wiring: Wiring;
  readonly circuit: Circuit;
  readonly solution: Solution;
  readonly branchOf: ReadonlyMap<string, number>;
}

/** A printed netlist solved; its words are those of `PublishedNetwork`. */
export function solveNetlist(netlist: string): Read {
  const wiring = new Wiring();
  wiring.node("0");
  const branchOf = new Map<string, number>();
  for (const [, type, name, a, b, value] of netlist.matchAll(/(\w) (\w+) (\w+) (\w+) (\S+)/g)) {
    branchOf.set(name!, add(wiring, type!, a!, b!, Number(value)));
  }
  const circuit = wiring.circuit("0");
  return { wiring, circuit, branchOf, solution: solveDc(circuit, wiring.state()) };
}

function add(wiring: Wiring, type: string, a: string, b: string, value: number): number {
  if (type === "R") return wiring.wire(a, b, value);
  if (type === "V") return wiring.source(a, b, value);
  return type === "I" ? wiring.source(a, b, STIFF_V, STIFF_V / value) : wiring.diode(a, b, value, 0);
}

/** What the solution says of a thing printed: "V 2", "I R1", "P R1", "R V1". */
export function reading({ wiring, circuit, solution, branchOf }: Read, printed: string): number {
  const [quantity, name] = printed.split(" ") as [string, string];
  const index = branchOf.get(name);
  if (index === undefined) return wiring.volts(solution, name);
  const branch = circuit.branches[index]!;
  const volts = solution.nodeV[branch.a]! - solution.nodeV[branch.b]!;
  const amps = solution.branchA[index]!;
  return { V: volts, I: amps, P: volts * amps, R: volts / amps }[quantity]!;
}
