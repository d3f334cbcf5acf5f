import type { TakenReading } from "../document/index.ts";
import { predictorOf } from "./predict.ts";
import type { Suspect } from "./suspects.ts";

/** From less than any crimp has to as good as open, four steps a decade. Ohms. */
const OHMS = Array.from({ length: 33 }, (_, at) => 10 ** (at / 4 - 4));
const HALVINGS = 24;

/**
 * How many ohms (or volts) more at the suspect make `wrong` read as it does: the smallest that will. `null`: none does. A fault
 * has no amount: 0.
 */
export function fitAmount(suspect: Suspect, wrong: TakenReading): number | null {
  const missBy = (amount: number): number | null => {
    const predicted = predictorOf(suspect.changed(amount))(wrong);
    return predicted === null ? null : predicted - wrong.value;
  };
  if (suspect.trouble === "fault") return 0;
  return suspect.trouble === "volts" ? fitVolts(missBy) : fitOhms(missBy);
}

/** Volts at a source act as good as linearly; a load that drops out on the way spoils the fit, and the check that follows sees it. */
function fitVolts(missBy: (amount: number) => number | null): number | null {
  const [none, more] = [missBy(0), missBy(0.1)];
  if (none === null || more === null || Math.abs(more - none) < 1e-6) return null;
  return (-none * 0.1) / (more - none);
}

function fitOhms(missBy: (amount: number) => number | null): number | null {
  const sound = missBy(0);
  const open = missBy(OHMS.at(-1)!);
  // What the reading does not feel at all can't explain it.
  if (sound === null || open === null || Math.abs(open - sound) < 1e-9) return null;
  let [low, lowMiss] = [0, sound];
  for (const high of OHMS) {
    const miss = missBy(high);
    if (miss === null) continue;
    if (Math.sign(miss) !== Math.sign(lowMiss)) return between(low, high, lowMiss, missBy);
    [low, lowMiss] = [high, miss];
  }
  return null;
}

function between(from: number, to: number, fromMiss: number, missBy: (amount: number) => number | null): number {
  let [low, high] = [from, to];
  for (let turn = 0; turn < HALVINGS; turn++) {
    const middle = low === 0 ? high / 2 : Math.sqrt(low * high);
    const miss = missBy(middle);
    if (miss === null || Math.sign(miss) === Math.sign(fromMiss)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
