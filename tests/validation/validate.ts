import type { Io } from "../../app/headless/io.ts";
import { quantities } from "./quantities.ts";
import { errorOf, type Quantity } from "./quantity.ts";

/** One line of the accuracy table: what is checked, how often, how far off on average and at worst, and what is allowed. */
interface AccuracyRow {
  readonly quantity: string;
  readonly checks: number;
  readonly meanError: number;
  readonly worstError: number;
  readonly limit: number;
  readonly unit: string;
  readonly source: string;
  /** Which check is the worst, when it is beyond the limit. */
  readonly failure: string | null;
}

/** Prints how exact the program is against outside values. Exit 0: all within their limits; 1: some are not. */
export function run(argv: readonly string[], io: Io): number {
  const rows = accuracyTable(quantities);
  const failed = rows.filter((row) => row.failure !== null);
  if (argv.includes("--json")) io.out(`${JSON.stringify(rows, null, 2)}\n`);
  else io.out(tableText(rows));
  for (const row of failed) io.err(`${row.quantity}: ${row.failure}\n`);
  return failed.length === 0 ? 0 : 1;
}

export function accuracyTable(of: readonly Quantity[]): readonly AccuracyRow[] {
  return of.map((quantity) => {
    const errors = quantity.checks.map((check) => errorOf(quantity, check));
    const worstError = Math.max(...errors);
    const worst = quantity.checks[errors.indexOf(worstError)];
    return {
      quantity: quantity.quantity,
      checks: errors.length,
      meanError: errors.reduce((sum, error) => sum + error, 0) / errors.length,
      worstError,
      limit: quantity.limit,
      unit: quantity.unit,
      source: quantity.source,
      failure: worst && worstError > quantity.limit ? `${worst.of}: got ${worst.got}, wanted ${worst.expected}` : null,
    };
  });
}

function tableText(rows: readonly AccuracyRow[]): string {
  const head = ["quantity", "checks", "mean error", "worst", "limit", "unit", "source"];
  const cells = rows.map((row) => [
    row.quantity,
    String(row.checks),
    ...[row.meanError, row.worstError, row.limit].map(shortNumber),
    row.unit,
    row.source,
  ]);
  const widths = head.map((_, column) => Math.max(...[head, ...cells].map((line) => line[column]?.length ?? 0)));
  const lines = [head, ...cells].map((line) =>
    line
      .map((cell, column) =>
        column >= 1 && column <= 4 ? cell.padStart(widths[column] ?? 0) : cell.padEnd(widths[column] ?? 0),
      )
      .join("  ")
      .trimEnd(),
  );
  const total = rows.reduce((sum, row) => sum + row.checks, 0);
  return `${lines.join("\n")}\n\n${rows.length} quantities, ${total} outside checks\n`;
}

function shortNumber(value: number): string {
  return value === 0 ? "0" : value.toPrecision(2);
}
