/**
 * Which diodes conduct. A diode is two straight lines: it blocks while its volts stay under `forwardV` and conducts while its
 * current runs forward. Starting from what is set, every diode found on the wrong line is turned over and the circuit
 * solved again. Turning all over at once nearly always ends in one or two rounds; where it doesn't reduce their number for
 * a while, only the one with the lowest index is turned, which ends for every network of resistances (Murty's least-index
 * rule for linear complementarity; the mix is that of Júdice and Pires, Computers & Operations Research 21 (1994), 587-596).
 */
import type { Model } from "./model.ts";

export type LinearOutcome =
  | { readonly status: "ok" }
  | { readonly status: "contradictory"; readonly conflict: readonly number[] }
  | { readonly status: "no-convergence" };

const OK: LinearOutcome = { status: "ok" };

/** Rounds of turning all at once that may pass without progress. */
const PATIENCE = 8;
/** Volts over `forwardV`, relative, and amps backwards that rounding alone can show. */
export const ROUNDING_V = 1e-12;
export const ROUNDING_A = 1e-13;

/** Solves the model's linear stand-ins with every diode on its right line. */
export function settleDiodes(model: Model): LinearOutcome {
  const limit = 100 + 20 * model.table.diodes.length;
  let fewest = Infinity;
  let patience = PATIENCE;
  for (let round = 0; round < limit; round++) {
    const conflict = model.solveLinear();
    if (conflict) {
      if (!relieve(model, conflict)) return { status: "contradictory", conflict };
      continue;
    }
    const wrong = wrongDiodes(model);
    if (wrong.length === 0) return OK;
    if (wrong.length < fewest) {
      fewest = wrong.length;
      patience = PATIENCE;
    } else patience--;
    for (const diode of patience > 0 ? wrong : wrong.slice(0, 1)) model.set(diode, !model.on[diode]);
  }
  return { status: "no-convergence" };
}

function wrongDiodes(model: Model): number[] {
  if (model.table.diodes.length === 0) return [];
  const rigidA = model.table.diodes.some((diode) => model.isRigid(diode))
    ? model.rigidFlows(model.linearOutOf())
    : null;
  return model.table.diodes.filter((diode) => {
    if (model.absent[diode]) return false;
    const { a, b } = model.circuit.branches[diode]!;
    const volts = model.volts(diode);
    if (!model.on[diode]) return volts > model.emf[diode]! + ROUNDING_V * (1 + Math.abs(volts));
    if (model.isRigid(diode)) return rigidA![diode]! < -ROUNDING_A;
    const conductance = model.g[diode]!;
    const noise = ROUNDING_A + 2e-15 * conductance * (Math.abs(model.nodeV[a]!) + Math.abs(model.nodeV[b]!));
    return conductance * volts + model.h[diode]! < -noise;
  });
}

/** Ideal diodes in a contradictory loop: the one with the highest forward volts gives way, as its current would run backwards. */
function relieve(model: Model, conflict: readonly number[]): boolean {
  let highest = -1;
  for (const index of conflict) {
    if (model.circuit.branches[index]!.type !== "diode") continue;
    if (highest < 0 || model.emf[index]! > model.emf[highest]!) highest = index;
  }
  if (highest < 0) return false;
  const others = conflict.filter((index) => index !== highest);
  const hasOtherDiode = others.some((index) => model.circuit.branches[index]!.type === "diode");
  if (!hasOtherDiode) return false;
  model.set(highest, false);
  return true;
}
