/**
 * The operating point for one position of every contact: which loads and converters stay on.
 *
 * All start on. From the open circuit (nothing draws yet) those without any volts, or reversed, are out: they could draw
 * nothing whatever the others do. Then the loads are settled; as long as some have no solution or stand outside their limits the
 * worst drops out, one at a time, and the rest are settled again from the same open circuit. One dropped stays out.
 */
import type { Branch } from "../circuit/index.ts";
import { settleDiodes } from "./diodes.ts";
import type { LinearOutcome } from "./diodes.ts";
import { TIE, filamentAtRating } from "./load-laws.ts";
import { settleLoads } from "./loads.ts";
import type { Draws } from "./loads.ts";
import type { Model } from "./model.ts";

/** Volts under which the ends of a load count as being at one potential. */
const DEAD_V = 1e-3;
/** Constant current flows, and an idle converter runs, from here up. */
const FROM_V = 1;
/** A limit is met within this part of itself: rounding must not decide. */
const SLACK = 1e-12;

/**
 * Settles the model. On "ok" its volts, lines and `on` are the operating point; `inputW` is filled with converters' input watts.
 * `idle`: 1 for each load that is not even to start.
 */
export function settlePoint(model: Model, inputW: Float64Array, idle?: Uint8Array): LinearOutcome {
  const draws: Draws = { openV: new Float64Array(model.on.length), inputW };
  for (const index of model.table.loads) {
    model.on[index] = canDraw(model.circuit.branches[index]!) && idle?.[index] !== 1 ? 1 : 0;
  }
  for (const index of model.table.converters) model.set(index, true);
  for (;;) {
    inputW.fill(0);
    for (const index of model.table.diodes) model.set(index, false);
    const opened = openCircuit(model, draws);
    if (opened.status !== "ok") return opened;
    const conducting = model.table.diodes.filter((index) => model.on[index]);
    for (const index of model.table.loads) if (isHopeless(model, index)) model.on[index] = 0;
    const outcome = dropOut(model, draws, conducting);
    if (outcome !== "reopen") return outcome;
  }
}

/** Settles loads and drops the worst until all is well; "reopen" when it was a converter, whose output goes with it. */
function dropOut(model: Model, draws: Draws, conducting: readonly number[]): LinearOutcome | "reopen" {
  for (;;) {
    const outcome = settleLoads(model, draws);
    if (outcome.status === "contradictory" || outcome.status === "no-convergence") return outcome;
    let out: readonly number[];
    if (outcome.status === "ok") {
      out = worstOf(model.table.draws, (index) => (model.on[index] === 1 ? violation(model, draws, index) : 0));
      if (out.length === 0) return outcome;
    } else {
      reopen(model, conducting);
      out = unsupplied(model, draws);
      if (out.length === 0) return { status: "no-convergence" };
    }
    let lostConverter = false;
    for (const index of out) {
      if (model.table.converters.includes(index)) {
        model.set(index, false);
        lostConverter = true;
      } else model.on[index] = 0;
    }
    if (lostConverter) return "reopen";
    reopen(model, conducting);
    draws.inputW.fill(0);
  }
}

function canDraw(branch: Branch): boolean {
  return branch.type === "current" ? branch.amps > 0 : "watts" in branch && branch.watts > 0;
}

/** Stands every load still on at its open-circuit line. */
function layLoadsOpen(model: Model): void {
  for (const index of model.table.loads) {
    const branch = model.circuit.branches[index]!;
    const line = branch.type === "filament" && model.on[index] ? filamentAtRating(branch) : TIE;
    model.setDraw(index, line.g, line.h);
  }
  for (const index of model.table.converters) model.setDraw(index, TIE.g, TIE.h);
}

/**
 * Solves with nothing drawing; converters whose input then has no volts go off, each time afresh. One that contradicts another ideal
 * source is left out to see whether its input has any: only then does it stand.
 */
function openCircuit(model: Model, draws: Draws): LinearOutcome {
  const { converters, draws: branches } = model.table;
  const hasVolts = (index: number): boolean => model.volts(index) >= FROM_V * (1 - SLACK);
  let contradiction: LinearOutcome | null = null;
  const suspects: number[] = [];
  layLoadsOpen(model);
  for (;;) {
    const outcome = settleDiodes(model);
    let off = outcome.status === "ok" ? converters.filter((index) => model.on[index] === 1 && !hasVolts(index)) : [];
    if (outcome.status === "contradictory") {
      off = outcome.conflict.filter((index) => converters.includes(index));
      suspects.push(...off);
      contradiction ??= outcome;
    }
    if (outcome.status !== "ok" && off.length === 0) return outcome;
    if (off.length === 0) break;
    for (const index of off) model.set(index, false);
  }
  if (contradiction && suspects.some(hasVolts)) return contradiction;
  for (const index of branches) draws.openV[index] = model.volts(index);
  return { status: "ok" };
}

function reopen(model: Model, conducting: readonly number[]): void {
  layLoadsOpen(model);
  for (const index of model.table.diodes) model.set(index, conducting.includes(index));
}

/** No volts at all, or reversed: such a load draws nothing whatever else drops out. */
function isHopeless(model: Model, index: number): boolean {
  const branch = model.circuit.branches[index]!;
  const volts = model.volts(index);
  if (branch.type !== "power" && branch.type !== "current") return false;
  return Math.abs(volts) < DEAD_V || (volts < 0 && !branch.eitherWay);
}

/** How far a settled load or converter stands outside what it can work with, as a part of the limit; 0: within. */
function violation(model: Model, { inputW, openV }: Draws, index: number): number {
  const branch = model.circuit.branches[index]!;
  const volts = model.volts(index);
  switch (branch.type) {
    case "current":
      return below(volts * Math.sign(openV[index]!), FROM_V);
    case "converter":
      return inputW[index] === 0 ? below(volts, FROM_V) : 0;
    case "power": {
      const size = branch.eitherWay ? Math.abs(volts) : volts;
      const under = branch.minV === null ? 0 : below(size, branch.minV);
      const over = branch.maxV === null || size <= branch.maxV * (1 + SLACK) ? 0 : size / branch.maxV - 1;
      return Math.max(under, over);
    }
    case "filament":
    case "resistor":
    case "contact":
    case "source":
    case "diode":
      return 0;
    default:
      return branch satisfies never;
  }
}

function below(volts: number, limitV: number): number {
  return volts >= limitV * (1 - SLACK) ? 0 : (limitV - volts) / limitV;
}

/**
 * Loads that have no solution: all that ask for more than the wiring could bring each of them with nothing else on (E² / 4R of
 * power, E / R of current), else the one that asks for the largest part of that.
 */
function unsupplied(model: Model, draws: Draws): readonly number[] {
  if (model.solveLinear() !== null) return [];
  const asking = model.table.draws.filter((index) => model.on[index] === 1);
  const share = new Map(asking.map((index) => [index, shareAsked(model, draws, index)]));
  const alone = asking.filter((index) => share.get(index)! > 1);
  if (alone.length > 0) return alone;
  const worst = worstOf(asking, (index) => share.get(index)!);
  // A converter whose output holds its own input up asks for no part of any wiring, and for ever more.
  return worst.length > 0 ? worst : worstOf(model.table.converters, (index) => draws.inputW[index]!);
}

/** What a load asks for as a part of the most its wiring could bring it. */
function shareAsked(model: Model, { inputW }: Draws, index: number): number {
  const branch = model.table.branches[index]!;
  const openV = Math.abs(model.volts(index));
  const ohm = model.assembly.resistanceBetween(branch.a, branch.b);
  if (branch.type === "current") return (branch.amps * ohm) / openV;
  const watts = branch.type === "power" ? branch.watts : branch.type === "converter" ? inputW[index]! : 0;
  return (watts * 4 * ohm) / openV ** 2;
}

/** The one with the greatest measure above 0 (of equals the first), or none. */
function worstOf(indices: readonly number[], measure: (index: number) => number): readonly number[] {
  let worst = -1;
  let most = 0;
  for (const index of indices) {
    const size = measure(index);
    if (size > most) {
      most = size;
      worst = index;
    }
  }
  return worst < 0 ? [] : [worst];
}
