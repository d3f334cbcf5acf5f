import type { TakenReading } from "../../document/index.ts";

/** Where the leads go in a way the solver knows too, and the limits as numbers. */
export interface MeterPoint extends Pick<TakenReading, "situation" | "meter" | "red" | "black"> {
  /** As solved, in volts, amps or ohms; `null`: not a matter of one number. */
  readonly expected: number | null;
  readonly least: number | null;
  readonly most: number | null;
}

/** One reading to take. */
export interface TestRow {
  readonly red: string;
  readonly black: string;
  readonly meter: string;
  /** What the drawing, solved, says it will be. */
  readonly expected: string;
  readonly pass: string;
  /** Where to look if it does not pass. */
  readonly look: string;
  /** Absent: nothing to type in, or no number decides. */
  readonly point?: MeterPoint;
}

/** A step of the proof: the state to bring about, then its readings. */
export interface TestStep {
  readonly title: string;
  readonly set: string;
  readonly rows: readonly TestRow[];
}

/** Whether a value taken there passes. */
export function passes({ least, most }: Pick<MeterPoint, "least" | "most">, value: number): boolean {
  return (least === null || value >= least) && (most === null || value <= most);
}

/** Whether a reading on record was taken at this point. */
export function isAt(point: Pick<TakenReading, "situation" | "meter" | "red" | "black">, taken: TakenReading): boolean {
  const { situation, meter, red, black } = point;
  return taken.situation === situation && taken.meter === meter && taken.red === red && taken.black === black;
}

/** Between two decimals that a meter shows: "12.59 V". */
export function voltsText(volts: number): string {
  const text = volts.toFixed(2);
  return `${text === "-0.00" ? "0.00" : text} V`;
}
