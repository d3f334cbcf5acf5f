import type { TakenReading } from "../document/index.ts";
import { predictorOf } from "./predict.ts";
import type { Suspect } from "./suspects.ts";

/** From less than any crimp has to as good as open, two steps a decade. Ohms. */
const OHMS = Array.from({ length: 17 }, (_, at) => 10 ** (at / 2 - 4));
/** Between steps the reading is looked at ever closer while it bends or jumps by more than this. Volts or amps. */
const BEND = 0.2;
const MOST_SPLITS = 6;
/** Leaves less than a thousandth of the amount. */
const HALVINGS = 12;

/**
 * How many ohms (or volts) more at the suspect may make `wrong` read as it does. Several, where loads that drop out one by one let
 * the reading pass the same value again, or jump past it: the other readings tell which. None: empty. A fault has no amount: 0.
 */
export function fitAmounts(suspect: Suspect, wrong: TakenReading): readonly number[] {
  const missBy = (amount: number): number | null => {
    const predicted = predictorOf(suspect.changed(amount))(wrong);
    return predicted === null ? null : predicted - wrong.value;
  };
  if (suspect.trouble === "fault") return [0];
  return suspect.trouble === "volts" ? fitVolts(missBy) : fitOhms(missBy);
}

/** What a reading would show with so much more, less what it showed; `null`: nothing settles. */
type MissBy = (amount: number) => number | null;

/** Volts at a source act as good as linearly; a load that drops out on the way spoils the fit, and the check that follows sees it. */
function fitVolts(missBy: MissBy): number[] {
  const [none, more] = [missBy(0), missBy(0.1)];
  if (none === null || more === null || Math.abs(more - none) < 1e-6) return [];
  return [(-none * 0.1) / (more - none)];
}

function fitOhms(missBy: MissBy): number[] {
  const steps = [0, ...OHMS].map((ohm) => ({ ohm, miss: missBy(ohm) }));
  const [sound, open] = [steps[0]!.miss, steps.at(-1)!.miss];
  // What the reading does not feel at all can't explain it.
  if (sound === null || open === null || Math.abs(open - sound) < 1e-9) return [];
  const settled = steps.flatMap(({ ohm, miss }) => (miss === null ? [] : [{ ohm, miss }]));
  return settled.slice(1).flatMap((step, at) => crossings(settled[at]!, step, missBy, MOST_SPLITS));
}

interface Step {
  readonly ohm: number;
  readonly miss: number;
}

/** Where the miss goes through nothing, or jumps past it, between two steps. */
function crossings(low: Step, high: Step, missBy: MissBy, splits: number): number[] {
  const ohm = middleOf(low.ohm, high.ohm);
  const miss = splits === 0 ? null : missBy(ohm);
  const isBent = miss !== null && Math.abs(miss - (low.miss + high.miss) / 2) > BEND;
  if (isBent) {
    const middle = { ohm, miss };
    return [...crossings(low, middle, missBy, splits - 1), ...crossings(middle, high, missBy, splits - 1)];
  }
  return Math.sign(low.miss) === Math.sign(high.miss) ? [] : [between(low.ohm, high.ohm, low.miss, missBy)];
}

function middleOf(low: number, high: number): number {
  return low === 0 ? high / 2 : Math.sqrt(low * high);
}

function between(from: number, to: number, fromMiss: number, missBy: MissBy): number {
  let [low, high] = [from, to];
  for (let turn = 0; turn < HALVINGS; turn++) {
    const middle = middleOf(low, high);
    const miss = missBy(middle);
    if (miss === null || Math.sign(miss) === Math.sign(fromMiss)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
