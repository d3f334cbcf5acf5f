import type { Document, TakenReading } from "../document/index.ts";
import { buildNetlist } from "../netlist/index.ts";
import { formatNumber } from "../units/index.ts";
import { fitAmounts } from "./fit-amounts.ts";
import { predictorOf } from "./predict.ts";
import { suspectsOf, type Suspect } from "./suspects.ts";

/** One explanation of a wrong reading; places that no reading taken so far tells apart stand together: they are one segment. */
export interface Blame {
  /** Wire ids, part ids or terminal addresses, in the order of the drawing. */
  readonly at: readonly string[];
  readonly text: string;
  /** Ohms more than drawn in one of these places; `null` for a fault of another nature. */
  readonly extraOhm: number | null;
  /** Readings taken that it agrees with, the wrong one among them. */
  readonly explains: number;
}

/** A reading agrees with what is foretold within this: what meters, lengths and terminals differ by. Our own choice. */
const SLACK = {
  V: { least: 0.06, share: 0.02 },
  A: { least: 0.15, share: 0.1 },
  ohm: { least: 0.2, share: 0.2 },
} as const;
/** Predictions this near, in such slacks, are the same to anyone with a meter. */
const SAME = 0.2;
const MOST_BLAMES = 3;

interface Explanation {
  readonly suspect: Suspect;
  readonly amount: number;
  readonly predicted: readonly (number | null)[];
  readonly explains: number;
  /** Sum over the readings, each in slacks, squared and capped. */
  readonly misfit: number;
}

/**
 * What best explains `wrong`, among `readings` taken on the same drawing: best first, at most three; empty when nothing does.
 * Every wire, joint and contact is tried with just the ohms that would make the reading what it is, every source with other volts,
 * every fault of the drill; each is judged by how many of the other readings it agrees with.
 */
export function diagnose(document: Document, readings: readonly TakenReading[], wrong: TakenReading): Blame[] {
  const netlist = buildNetlist(document);
  const taken = readings.includes(wrong) ? readings : [...readings, wrong];
  const explanations = suspectsOf(document, netlist)
    .flatMap((suspect) => explanationOf(suspect, taken, wrong))
    .sort(moreLikely);
  return segmentsOf(explanations, taken).slice(0, MOST_BLAMES).map(blameOf);
}

/** Of explanations that agree as well, a poor joint is likelier than a source far from its volts, and that than a fault. */
const LIKELY: readonly Suspect["trouble"][] = ["resistance", "volts", "fault"];
/** Misfits nearer than this are equal. */
const EQUAL_MISFIT = 0.05;

function moreLikely(one: Explanation, other: Explanation): number {
  const misfit = ({ misfit }: Explanation) => Math.round(misfit / EQUAL_MISFIT);
  const rank = ({ suspect }: Explanation) => LIKELY.indexOf(suspect.trouble);
  return other.explains - one.explains || misfit(one) - misfit(other) || rank(one) - rank(other);
}

/** The best the suspect can do; empty where it can't be it. */
function explanationOf(suspect: Suspect, taken: readonly TakenReading[], wrong: TakenReading): Explanation[] {
  return fitAmounts(suspect, wrong)
    .flatMap((amount) => explanationWith(suspect, amount, taken, wrong))
    .sort(moreLikely)
    .slice(0, 1);
}

function explanationWith(
  suspect: Suspect,
  amount: number,
  taken: readonly TakenReading[],
  wrong: TakenReading,
): Explanation[] {
  const predict = predictorOf(suspect.changed(amount));
  // Most faults already fail here, before the other situations are solved.
  if (slacksOff(wrong, predict(wrong)) > 1) return [];
  const predicted = taken.map(predict);
  const misses = taken.map((reading, at) => slacksOff(reading, predicted[at]!));
  const explains = misses.filter((miss) => miss <= 1).length;
  return [
    { suspect, amount, predicted, explains, misfit: misses.reduce((sum, miss) => sum + Math.min(miss, 5) ** 2, 0) },
  ];
}

/** How far a prediction is off, in slacks; 5 where there is none. */
function slacksOff({ meter, value }: TakenReading, predicted: number | null): number {
  return predicted === null ? 5 : Math.abs(predicted - value) / slack(meter, value);
}

function slack(meter: TakenReading["meter"], value: number): number {
  return SLACK[meter].least + SLACK[meter].share * Math.abs(value);
}

/** Explanations of the same kind that foretell the same readings, put together. */
function segmentsOf(explanations: readonly Explanation[], taken: readonly TakenReading[]): Explanation[][] {
  const segments: Explanation[][] = [];
  for (const explanation of explanations) {
    const same = segments.find(([first]) => isSame(first!, explanation, taken));
    if (same) same.push(explanation);
    else segments.push([explanation]);
  }
  return segments;
}

function isSame(one: Explanation, other: Explanation, taken: readonly TakenReading[]): boolean {
  return (
    one.suspect.trouble === other.suspect.trouble &&
    taken.every(({ meter, value }, at) => {
      const [a, b] = [one.predicted[at]!, other.predicted[at]!];
      return a === null || b === null ? a === b : Math.abs(a - b) / slack(meter, value) < SAME;
    })
  );
}

function blameOf(segment: readonly Explanation[]): Blame {
  const [first] = segment as [Explanation];
  const { trouble } = first.suspect;
  const names = segment.map(({ suspect }) => suspect.name);
  const amount = formatNumber(Math.abs(first.amount), 2);
  const text =
    trouble === "fault"
      ? names.join("; or ")
      : trouble === "volts"
        ? `${names.join(" or ")} gives ${amount} V ${first.amount < 0 ? "less" : "more"} than drawn`
        : `About ${amount} Ω too much in ${names.join("; or in ")}`;
  return {
    at: segment.map(({ suspect }) => suspect.at),
    text,
    extraOhm: trouble === "resistance" ? first.amount : null,
    explains: first.explains,
  };
}
