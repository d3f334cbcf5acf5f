import type { TakenReading } from "../../core/document/index.ts";
import { isAt, testSteps, type MeterPoint, type PaperSource, type TestRow } from "../../core/papers/index.ts";

/** One reading of the test sheet, with the step it belongs to. */
export interface ReadingRow extends TestRow {
  /** "3.2", as on the sheet. */
  readonly number: string;
  readonly step: string;
  readonly set: string;
}

/** The test sheet's readings, one after the other. */
export function readingRows(source: PaperSource): ReadingRow[] {
  return testSteps(source).flatMap(({ title, set, rows }, at) =>
    rows.map((row, index) => ({ ...row, number: `${at + 1}.${index + 1}`, step: title, set })),
  );
}

/** What was read at a point last. */
export function takenAt(point: MeterPoint, readings: readonly TakenReading[]): TakenReading | undefined {
  return readings.findLast((reading) => isAt(point, reading));
}

/** The readings with one put in; what stood at the same point goes. */
export function withReading(
  readings: readonly TakenReading[],
  point: MeterPoint,
  value: number,
  date: string,
): readonly TakenReading[] {
  const { situation, meter, red, black } = point;
  const taken = { situation, meter, red, ...(black === undefined ? {} : { black }), value, date };
  return [...readings.filter((reading) => !isAt(point, reading)), taken];
}
