import type { Branch, Circuit } from "../circuit/index.ts";
import { stateOf, type Combination, type Netlist } from "../netlist/index.ts";
import { solveCombination, voltsBetween } from "../readings/index.ts";
import { solveDc } from "../solver/index.ts";

/** What the meter's display says. `open`: OL, no path or no common zero. `unsettled`: the relays chatter. */
export type MeterReading =
  { readonly says: "volts" | "amps" | "ohms"; readonly value: number } | { readonly says: "open" | "unsettled" };

/** Red and black lead, as node numbers (`NetTerminal.node`). */
export interface Leads {
  readonly red: number;
  readonly black: number;
}

/** Volts at the red lead over the black one, the controls as given. */
export function readVolts(netlist: Netlist, combination: Combination, { red, black }: Leads): MeterReading {
  const solution = solveCombination(netlist, combination);
  if (solution.status !== "ok") return { says: "unsettled" };
  const volts = voltsBetween(solution, red, black);
  return volts === null ? { says: "open" } : { says: "volts", value: volts };
}

/** Amps through a wire as a clamp round it reads them, positive from its `from` end. `wire`: its number. */
export function readClampAmps(netlist: Netlist, combination: Combination, wire: number): MeterReading {
  const solution = solveCombination(netlist, combination);
  if (solution.status !== "ok") return { says: "unsettled" };
  return { says: "amps", value: solution.branchA[netlist.wires[wire]!.branch]! };
}

/** A meter on its ohms range sends this much through what it measures. Common practice, no source. */
const TEST_A = 1e-3;
/** More than this shows as open on a common meter: 20 megohm. Common practice, no source. */
const MOST_OHM = 2e7;

/**
 * Ohms between the leads with the power off: every battery and feed disconnected, the contacts where the controls put them and
 * every relay released. Electronics (LED lamps, constant-power and constant-current loads, converters) and diodes show open; a
 * filament shows its working resistance, several times what a real meter finds on a cold one.
 */
export function readOhms(netlist: Netlist, combination: Combination, { red, black }: Leads): MeterReading {
  const state = stateOf(netlist, combination);
  const branches = netlist.circuit.branches.map(withPowerOff);
  const closed = Uint8Array.of(
    ...state.closed.map((value, at) => (isGone(netlist.circuit.branches[at]!) ? 0 : value)),
    1,
  );
  for (const { breaks } of netlist.circuit.relays) for (const contact of breaks) closed[contact] = 1;
  // A current that a large resistance sets: 1 V per ohm it is far above anything measured.
  const emf = TEST_A * SOURCE_OHM;
  const source: Branch = { type: "source", a: red, b: black, volts: emf, ohm: SOURCE_OHM };
  const circuit: Circuit = {
    nodeCount: netlist.nodeCount,
    branches: [...branches, source],
    relays: [],
    references: [black],
  };
  const solution = solveDc(circuit, { closed, sourceV: null });
  if (solution.status !== "ok") return { says: "open" };
  const volts = voltsBetween(solution, red, black);
  const amps = solution.branchA[branches.length]!;
  const ohms = volts === null || amps <= 0 ? Infinity : Math.abs(volts) / amps;
  return ohms > MOST_OHM ? { says: "open" } : { says: "ohms", value: ohms };
}

const SOURCE_OHM = 1e6;

function isGone(branch: Branch): boolean {
  return (
    branch.type === "source" ||
    branch.type === "power" ||
    branch.type === "current" ||
    branch.type === "converter" ||
    branch.type === "diode"
  );
}

function withPowerOff(branch: Branch): Branch {
  if (isGone(branch)) return { type: "contact", a: branch.a, b: branch.b, ohm: 0 };
  if (branch.type !== "filament") return branch;
  return { type: "resistor", a: branch.a, b: branch.b, ohm: branch.ratedV ** 2 / branch.watts };
}
