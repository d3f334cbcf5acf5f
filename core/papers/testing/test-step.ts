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
}

/** A step of the proof: the state to bring about, then its readings. */
export interface TestStep {
  readonly title: string;
  readonly set: string;
  readonly rows: readonly TestRow[];
}

/** Between two decimals that a meter shows: "12.59 V". */
export function voltsText(volts: number): string {
  const text = volts.toFixed(2);
  return `${text === "-0.00" ? "0.00" : text} V`;
}
