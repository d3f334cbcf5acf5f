/**
 * Volts and amps of the loads that draw, by iteration from the open-circuit volts downwards.
 *
 * Plain way: every constant power is a fixed current worked out from the volts of the round before. With a few percent of drop
 * each round gains more than a digit, and the conductances stay untouched. Near the most a wiring can bring (half the
 * volts gone) that crawls, so Newton's method takes over: tangents in place of fixed currents, again from the open circuit.
 * Coming from above, both end on the higher-voltage solution. Newton running through zero means there is no solution.
 */
import { settleDiodes } from "./diodes.ts";
import type { LinearOutcome } from "./diodes.ts";
import { TIE, currentLine, filamentA, filamentLine, filamentNext, powerLine } from "./load-laws.ts";
import type { Line } from "./load-laws.ts";
import type { Model } from "./model.ts";

export type LoadOutcome = LinearOutcome | { readonly status: "unsolvable" };
type RoundOutcome = LoadOutcome | { readonly status: "slow" };

const ROUNDS = 60;
/** Relative mismatch between a load's law and its line that counts as none, and that may stay when it falls no further. */
const EXACT = 2e-15;
const GOOD = 1e-11;
/** A round that leaves more than this part of the mismatch is slow. */
const SLOW = 0.3;

/** What the loads iteration knows beside the model; arrays run over branches. */
export interface Draws {
  /** Volts to start from. */
  readonly openV: Float64Array;
  /** Watts a converter takes in at present. */
  readonly inputW: Float64Array;
}

/** Finds the operating point with exactly the loads that are on in the model drawing, converter inputs included. */
export function settleLoads(model: Model, draws: Draws): LoadOutcome {
  const start = draws.openV.slice();
  for (let round = 0; round < ROUNDS; round++) {
    let outcome = iterate(model, draws, start.slice(), false);
    if (outcome.status === "slow") outcome = iterate(model, draws, start.slice(), true);
    if (outcome.status === "slow") return { status: "unsolvable" };
    if (outcome.status !== "ok" || !convertersChanged(model, draws)) return outcome;
  }
  return { status: "no-convergence" };
}

/** Branches whose current hangs on their volts: loads that are on, and converters that have something to supply. */
function drawing(model: Model, { inputW }: Draws): number[] {
  const branches = [...model.table.loads, ...model.table.converters.filter((index) => inputW[index]! > 0)];
  return branches.filter((index) => model.on[index]);
}

function iterate(model: Model, draws: Draws, at: Float64Array, newton: boolean): RoundOutcome {
  const active = drawing(model, draws);
  let before = Infinity;
  for (let round = 0; round < ROUNDS; round++) {
    for (const index of active) {
      const line = lineOf(model, draws, index, at[index]!, newton);
      model.setDraw(index, line.g, line.h);
    }
    const outcome = settleDiodes(model);
    // Lines far from any solution can chase the diodes round: that too is no solution.
    if (outcome.status === "no-convergence") return { status: newton ? "unsolvable" : "slow" };
    if (outcome.status !== "ok") return outcome;
    let worst = 0;
    for (const index of active) {
      const volts = model.volts(index);
      if (isConstantPower(model, index) && !(volts * draws.openV[index]! > 0))
        return { status: newton ? "unsolvable" : "slow" };
      worst = Math.max(worst, mismatch(model, draws, index, volts));
      at[index] = nextVolts(model, index, at[index]!, volts);
    }
    if (worst <= EXACT || (worst <= GOOD && worst > before / 2)) return { status: "ok" };
    if (!newton && round >= 3 && worst > SLOW * before && active.some((index) => isConstantPower(model, index))) {
      return { status: "slow" };
    }
    before = worst;
  }
  return { status: newton ? "unsolvable" : "slow" };
}

function isConstantPower(model: Model, index: number): boolean {
  const { type } = model.circuit.branches[index]!;
  return type === "power" || type === "converter";
}

function lineOf(model: Model, draws: Draws, index: number, volts: number, newton: boolean): Line {
  const branch = model.circuit.branches[index]!;
  switch (branch.type) {
    case "filament":
      return filamentLine(branch, volts);
    case "current":
      return currentLine(ampsAt(model, draws, index, volts), volts);
    case "power":
    case "converter": {
      const amps = ampsAt(model, draws, index, volts);
      return newton ? powerLine(amps * volts, volts) : currentLine(amps, volts);
    }
    case "resistor":
    case "contact":
    case "source":
    case "diode":
      return TIE;
    default:
      return branch satisfies never;
  }
}

/** Amps a to b of a load that is on, by its law. */
function ampsAt(model: Model, { openV, inputW }: Draws, index: number, volts: number): number {
  const branch = model.circuit.branches[index]!;
  switch (branch.type) {
    case "filament":
      return filamentA(branch, volts);
    case "current":
      return Math.sign(openV[index]!) * branch.amps;
    case "power":
      return branch.watts / volts;
    case "converter":
      return inputW[index]! / volts;
    case "resistor":
    case "contact":
    case "source":
    case "diode":
      return 0;
    default:
      return branch satisfies never;
  }
}

function mismatch(model: Model, draws: Draws, index: number, volts: number): number {
  const wanted = ampsAt(model, draws, index, volts);
  const given = model.g[index]! * volts + model.h[index]!;
  return Math.abs(wanted - given) / (Math.abs(wanted) + 1e-9);
}

function nextVolts(model: Model, index: number, from: number, volts: number): number {
  const branch = model.circuit.branches[index]!;
  if (branch.type !== "filament") return volts;
  return filamentNext(branch, from, volts, model.g[index]! * volts + model.h[index]!);
}

/** Brings converters' input watts into line with what their outputs deliver now; tells whether any had to change. */
function convertersChanged(model: Model, { inputW }: Draws): boolean {
  const running = model.table.converters.filter((index) => model.on[index]);
  if (running.length === 0) return false;
  const flows = model.rigidFlows(model.linearFlows())!;
  let changed = false;
  for (const index of running) {
    const branch = model.circuit.branches[index]!;
    if (branch.type !== "converter") continue;
    const watts = Math.max(0, (-flows[index]! * branch.volts) / branch.efficiency);
    const settled = watts < NO_LOAD_W ? 0 : watts;
    if (Math.abs(settled - inputW[index]!) > 1e-12 * settled) changed = true;
    inputW[index] = settled;
    if (settled === 0) model.setDraw(index, TIE.g, TIE.h);
  }
  return changed;
}

/** Output watts below which a converter counts as having no load: ties alone draw picowatts. */
const NO_LOAD_W = 1e-6;
