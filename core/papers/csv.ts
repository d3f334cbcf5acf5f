/** Cells a spreadsheet would take for a formula. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * Rows as CSV by RFC 4180: CRLF after every row, cells with commas, quotes or line breaks in quotes. Text that a spreadsheet
 * would run as a formula gets an apostrophe in front; numbers are written plainly, `null` as an empty cell.
 */
export function csv(rows: readonly (readonly (string | number | null)[])[]): string {
  return rows.map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

function cell(value: string | number | null): string {
  if (value === null) return "";
  if (typeof value === "number") return String(value);
  const text = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
