/**
 * Volts and amps of the loads that draw, by iteration from the open-circuit volts downwards.
 *
 * Plain way: every constant power is a fixed current worked out from the volts of the round before, and no conductance changes.
 * What all loads share of the wiring makes their volts close in on the solution together, so one secant through the last two
 * rounds, laid by least squares over all of them, takes most of the way that is left at once. Near the most a wiring can bring
 * (half the volts gone) that is not enough, and Newton's method takes over: tangents in place of fixed currents, again from the
 * open circuit. Coming from above, both end on the higher-voltage solution. Newton running through zero means there is no solution.
 */
import type { Branch } from "../circuit/index.ts";
import { settleDiodes } from "./diodes.ts";
import type { LinearOutcome } from "./diodes.ts";
import { TIE, filamentA, filamentLine, filamentNext, powerLine } from "./load-laws.ts";
import type { Line } from "./load-laws.ts";
import type { Model } from "./model.ts";

export type LoadOutcome = LinearOutcome | { readonly status: "unsolvable" };
type RoundOutcome = LoadOutcome | { readonly status: "slow" };

const ROUNDS = 60;
/** Rounds the plain way may take where there are constant powers. */
const PLAIN_ROUNDS = 16;
/** Relative mismatch between what a load draws and what was reckoned with that counts as none, or may stay when it falls no further. */
const EXACT = 2e-15;
const GOOD = 1e-11;
/** Below this mismatch a filament's tangent serves to the end. */
const CLOSE = 1e-3;
/** Volts that only a current forced through ties can make. */
const IMPOSSIBLE_V = 1e6;
/** Output watts below which a converter counts as having no load: ties alone draw picowatts. */
const NO_LOAD_W = 1e-6;
/** Input watts past all supply. */
const BOUNDLESS_W = 1e12;

/** What the iteration knows beside the model; arrays run over branches. */
export interface Draws {
  /** Volts to start from. */
  readonly openV: Float64Array;
  /** Watts a converter takes in at present. */
  readonly inputW: Float64Array;
}

/** Finds the operating point with exactly the loads that are on in the model drawing, converter inputs included. */
export function settleLoads(model: Model, draws: Draws): LoadOutcome {
  for (let round = 0; round < ROUNDS; round++) {
    const active = drawing(model, draws).map((index) => new Port(model, draws, index));
    let outcome: RoundOutcome = active.length === 0 ? settleDiodes(model) : iterate(model, active, false);
    if (outcome.status === "slow") outcome = iterate(model, active, true);
    if (outcome.status === "slow") return { status: "unsolvable" };
    if (outcome.status !== "ok" || !convertersChanged(model, draws)) return outcome;
  }
  // Input watts that grow without end: a converter that feeds itself can't be supplied.
  return { status: "unsolvable" };
}

/** Loads that are on, and converters that have something to supply. */
function drawing(model: Model, { inputW }: Draws): number[] {
  return model.table.draws.filter(
    (index) => model.on[index] === 1 && (inputW[index]! > 0 || model.table.branches[index]!.type !== "converter"),
  );
}

/** One load during the iteration. */
class Port {
  readonly index: number;
  /** Constant power, else 0. */
  readonly watts: number;
  private readonly branch: Branch;
  private readonly openV: number;
  /** Volts its next draw is worked out for. */
  private at: number;
  private gap = Infinity;
  /** Volts that came of the last draw, and by how much they missed what it was worked out for; and of the one before. */
  private met = 0;
  private miss = 0;
  private metBefore = 0;
  private missBefore = 0;

  constructor(model: Model, { openV, inputW }: Draws, index: number) {
    const branch = model.table.branches[index]!;
    this.index = index;
    this.branch = branch;
    this.watts = branch.type === "power" ? branch.watts : branch.type === "converter" ? inputW[index]! : 0;
    this.openV = openV[index]!;
    this.at = this.openV;
  }

  begin(model: Model): void {
    this.at = this.openV;
    this.gap = Infinity;
    if (this.branch.type !== "filament") model.setDraw(this.index, TIE.g, TIE.h);
  }

  /** Has the model reckon with what this load draws at `at`. */
  draw(model: Model, newton: boolean): void {
    const line = this.tangent(newton);
    if (line) model.setDraw(this.index, line.g, line.h);
    else model.setExtra(this.index, this.ampsAt(this.at) - (model.g[this.index]! * this.at + model.h[this.index]!));
  }

  private tangent(newton: boolean): Line | null {
    if (this.branch.type === "filament") return this.gap > CLOSE ? filamentLine(this.branch, this.at) : null;
    return newton && this.watts > 0 ? powerLine(this.watts, this.at) : null;
  }

  private ampsAt(volts: number): number {
    if (this.branch.type === "filament") return filamentA(this.branch, volts);
    if (this.branch.type === "current") return Math.sign(this.openV) * this.branch.amps;
    return this.watts / volts;
  }

  /** Constant power has come down to nothing, or past it; constant current is driven where only ties lead on. */
  hasCollapsed(volts: number): boolean {
    return (this.watts > 0 && !(volts * this.openV > 0)) || !(Math.abs(volts) < IMPOSSIBLE_V);
  }

  /** Takes the volts that came of the draw; gives the mismatch. */
  meet(model: Model, volts: number): number {
    const given = model.g[this.index]! * volts + model.h[this.index]! + model.extraA[this.index]!;
    const wanted = this.ampsAt(volts);
    this.gap = Math.abs(wanted - given) / (Math.abs(wanted) + 1e-9);
    this.metBefore = this.met;
    this.missBefore = this.miss;
    this.met = volts;
    this.miss = volts - this.at;
    this.at = this.branch.type === "filament" ? filamentNext(this.branch, this.at, volts, given) : volts;
    return this.gap;
  }

  /** Its part in the least-squares slope of the secant: change of miss times miss, and change squared. */
  addTo(slope: { along: number; square: number }): void {
    const change = this.miss - this.missBefore;
    slope.along += change * this.miss;
    slope.square += change * change;
  }

  /** Goes on from the volts met by this part of the last step, as long as that keeps to its side of the open volts. */
  extrapolate(part: number): void {
    const volts = this.met - part * (this.met - this.metBefore);
    if (volts * this.openV > 0 && Math.abs(volts) < 2 * Math.abs(this.openV)) this.at = volts;
  }
}

function iterate(model: Model, ports: readonly Port[], newton: boolean): RoundOutcome {
  const powers = ports.filter(({ watts }) => watts > 0);
  const rounds = newton || powers.length === 0 ? ROUNDS : PLAIN_ROUNDS;
  const failed: RoundOutcome = { status: newton ? "unsolvable" : "slow" };
  let before = Infinity;
  for (const port of ports) port.begin(model);
  for (let round = 0; round < rounds; round++) {
    for (const port of ports) port.draw(model, newton);
    const outcome = settleDiodes(model);
    // Draws far from any solution can chase the diodes round: that too is no solution.
    if (outcome.status === "no-convergence") return failed;
    if (outcome.status !== "ok") return outcome;
    let worst = 0;
    for (const port of ports) {
      const volts = model.volts(port.index);
      if (port.hasCollapsed(volts)) return failed;
      worst = Math.max(worst, port.meet(model, volts));
    }
    if (worst <= EXACT || (worst <= GOOD && worst > before / 2)) return outcome;
    if (!newton && round > 0) followSecant(powers);
    before = worst;
  }
  return failed;
}

function followSecant(powers: readonly Port[]): void {
  const slope = { along: 0, square: 0 };
  for (const port of powers) port.addTo(slope);
  if (slope.square === 0) return;
  for (const port of powers) port.extrapolate(slope.along / slope.square);
}

/** Brings converters' input watts into line with what their outputs deliver now; tells whether any had to change. */
function convertersChanged(model: Model, { inputW }: Draws): boolean {
  const running = model.table.converters.filter((index) => model.on[index] === 1);
  if (running.length === 0) return false;
  const flows = model.rigidFlows(model.linearOutOf())!;
  let changed = false;
  for (const index of running) {
    const branch = model.table.branches[index]!;
    if (branch.type !== "converter") continue;
    const watts = Math.max(0, (-flows[index]! * branch.volts) / branch.efficiency);
    const settled = watts < NO_LOAD_W ? 0 : Math.min(watts, BOUNDLESS_W);
    if (Math.abs(settled - inputW[index]!) > 1e-12 * settled) changed = true;
    inputW[index] = settled;
    if (settled === 0) model.setDraw(index, TIE.g, TIE.h);
  }
  return changed;
}
