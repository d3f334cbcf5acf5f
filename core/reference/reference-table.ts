/** One published value. What is missing here is said by its table. */
export interface ReferenceRow {
  /** What the value is of: "16 AWG, insulation 105 °C". */
  readonly of: string;
  readonly value: number | string;
  /** Where this row comes from, when not where the table comes from. */
  readonly source?: string;
  /** Not seen in the source, only remembered: usable with that said, never a check value. */
  readonly fromMemory?: true;
  readonly note?: string;
}

/** A table of published values as the help page shows it. The code that uses the numbers reads the same data. */
export interface ReferenceTable {
  readonly id: string;
  readonly title: string;
  /** Of every value; "" for words. */
  readonly unit: string;
  readonly source: string;
  /** Edition or year; `null` when the source states none. */
  readonly edition: string | null;
  /** Where the values hold, and what is done outside. */
  readonly range: string;
  readonly rows: readonly ReferenceRow[];
}
