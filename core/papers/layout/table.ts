import { inkBox, inkLine, inkText, RULE_MM } from "./ink.ts";
import { LINE_PITCH, SMALLEST_MM, textWidthMm, widestWordMm, wrapText } from "./lettering.ts";
import type { Block, Strip } from "./strip.ts";

export interface Column {
  readonly head: string;
  readonly align?: "start" | "end" | "middle";
  /** Never narrower than this. */
  readonly leastMm?: number;
  /** Share of the width left over; 0 keeps the column at its natural width. */
  readonly grow?: number;
}

/** Words, a small box to tick, or a large box to write in with a marker. */
export type Cell = string | { readonly blank: "tick" | "write" };

export type Row =
  | { readonly cells: readonly Cell[]; readonly sum?: boolean }
  /** A line across all columns that names what follows. */
  | { readonly band: string };

export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Said in place of the rows when there are none. */
  readonly none?: string;
  readonly leastRowMm?: number;
}

export const TICK = { blank: "tick" } as const;
export const WRITE = { blank: "write" } as const;

const SIZE = SMALLEST_MM;
const LINE_MM = SIZE * LINE_PITCH;
const PAD_X_MM = 1.4;
const PAD_Y_MM = 0.9;
/** So that a cell's own text never wraps for a rounding error. */
const ROUNDING_MM = 0.05;
const TICK_MM = 4;
const MOST_LINES = 6;
const LEAST_COLUMN_MM = 9;

/** A table as strips for `flow`: its head comes again at the top of every page it runs on to. */
export function tableBlock(table: Table, widthMm: number): Block {
  const widths = columnWidths(table, widthMm);
  const head = headStrip(table.columns, widths);
  if (table.rows.length === 0) return { strips: [noteStrip(table.none ?? "None.", widthMm)] };
  return { strips: table.rows.map((row) => rowStrip(row, table, widths)), head };
}

/**
 * Widths in millimetres that add up to `widthMm`: natural ones and the rest shared by `grow`; where that is too much, the
 * widest give up room first, each down to its widest word; where that is too much still, the widest give up more and words
 * break.
 */
export function columnWidths(table: Table, widthMm: number): number[] {
  const natural = table.columns.map((column, at) => columnNeed(column, at, table, (text) => textWidthMm(text, SIZE)));
  const spare = widthMm - sum(natural);
  if (spare >= 0) return spread(natural, table.columns, spare);
  const least = table.columns.map((column, at) =>
    Math.min(
      natural[at]!,
      Math.max(
        LEAST_COLUMN_MM,
        columnNeed(column, at, table, (text) => widestWordMm(text, SIZE)),
      ),
    ),
  );
  if (sum(least) <= widthMm) return cappedWidths(natural, least, widthMm);
  const narrow = table.columns.map(({ leastMm }, at) => Math.min(least[at]!, leastMm ?? LEAST_COLUMN_MM));
  if (sum(narrow) <= widthMm) return cappedWidths(least, narrow, widthMm);
  return narrow.map((width) => (width * widthMm) / sum(narrow));
}

/** Every column as wide as it likes up to one common limit, found by halving. */
function cappedWidths(natural: readonly number[], least: readonly number[], widthMm: number): number[] {
  const capped = (limit: number) => natural.map((width, at) => Math.max(least[at]!, Math.min(width, limit)));
  let [low, high] = [0, widthMm];
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2;
    if (sum(capped(middle)) > widthMm) high = middle;
    else low = middle;
  }
  return capped(low);
}

function spread(widths: readonly number[], columns: readonly Column[], spare: number): number[] {
  const shares = columns.map((column) => column.grow ?? 0);
  const all = sum(shares);
  return widths.map((width, at) => width + (all > 0 ? (spare * shares[at]!) / all : spare / widths.length));
}

function columnNeed(column: Column, at: number, table: Table, measure: (text: string) => number): number {
  const texts = [widestWordMm(column.head, SIZE)];
  for (const row of table.rows) {
    if (!("cells" in row)) continue;
    const cell = row.cells[at] ?? "";
    texts.push(typeof cell === "string" ? measure(cell.slice(0, 200)) : cell.blank === "tick" ? TICK_MM : 16);
  }
  return Math.max(column.leastMm ?? 0, ...texts.map((width) => width + 2 * PAD_X_MM + ROUNDING_MM));
}

function headStrip(columns: readonly Column[], widths: readonly number[]): Strip {
  const lines = columns.map((column, at) => wrapText(column.head, SIZE, widths[at]! - 2 * PAD_X_MM, 3));
  const heightMm = Math.max(...lines.map((each) => each.length)) * LINE_MM + 2 * PAD_Y_MM;
  return {
    heightMm,
    draw: (x, y) => [
      ...drawCells(lines, columns, widths, x, y + heightMm - PAD_Y_MM, "bottom"),
      inkLine(
        [
          [x, y + heightMm],
          [x + sum(widths), y + heightMm],
        ],
        { widthMm: RULE_MM.thick },
      ),
    ],
  };
}

function rowStrip(row: Row, table: Table, widths: readonly number[]): Strip {
  if (!("cells" in row)) return bandStrip(row.band, sum(widths));
  const lines = table.columns.map((_, at) => {
    const cell = row.cells[at] ?? "";
    return typeof cell === "string" ? wrapText(cell, SIZE, widths[at]! - 2 * PAD_X_MM, MOST_LINES) : [];
  });
  const textMm = Math.max(1, ...lines.map((each) => each.length)) * LINE_MM;
  const heightMm = Math.max(textMm + 2 * PAD_Y_MM, table.leastRowMm ?? 0, row.cells.some(isTick) ? TICK_MM + 1.6 : 0);
  return {
    heightMm,
    draw: (x, y) => [
      ...drawCells(lines, table.columns, widths, x, y + PAD_Y_MM, "top"),
      ...drawBlanks(row.cells, widths, x, y, heightMm),
      ...(row.sum
        ? [
            inkLine(
              [
                [x, y],
                [x + sum(widths), y],
              ],
              { widthMm: RULE_MM.normal },
            ),
          ]
        : []),
      inkLine(
        [
          [x, y + heightMm],
          [x + sum(widths), y + heightMm],
        ],
        { widthMm: row.sum ? RULE_MM.normal : RULE_MM.thin },
      ),
    ],
  };
}

function drawCells(
  lines: readonly (readonly string[])[],
  columns: readonly Column[],
  widths: readonly number[],
  x: number,
  y: number,
  edge: "top" | "bottom",
): string[] {
  return lines.flatMap((cell, at) => {
    const left = x + sum(widths.slice(0, at)) + PAD_X_MM;
    const room = widths[at]! - 2 * PAD_X_MM;
    const anchor = columns[at]!.align ?? "start";
    const textX = anchor === "start" ? left : anchor === "end" ? left + room : left + room / 2;
    const top = edge === "top" ? y : y - cell.length * LINE_MM;
    return cell.map((line, number) => inkText(textX, top + (number + 0.5) * LINE_MM, line, { anchor }));
  });
}

function drawBlanks(
  cells: readonly Cell[],
  widths: readonly number[],
  x: number,
  y: number,
  heightMm: number,
): string[] {
  return cells.flatMap((cell, at) => {
    if (typeof cell === "string") return [];
    const left = x + sum(widths.slice(0, at));
    const width = widths[at]!;
    if (cell.blank === "write")
      return [inkBox(left + 0.8, y + 0.9, width - 1.6, heightMm - 1.8, { widthMm: RULE_MM.normal })];
    return [
      inkBox(left + (width - TICK_MM) / 2, y + (heightMm - TICK_MM) / 2, TICK_MM, TICK_MM, { widthMm: RULE_MM.normal }),
    ];
  });
}

function bandStrip(text: string, widthMm: number): Strip {
  const lines = wrapText(text, SIZE, widthMm - 4, 2);
  const heightMm = lines.length * LINE_MM + 2.6;
  const above = heightMm - lines.length * LINE_MM - 0.6;
  return {
    heightMm,
    keepWithNext: true,
    draw: (x, y) => [
      inkBox(x, y + above + 0.2, 1.6, lines.length * LINE_MM - 0.4, { widthMm: 0, fill: "black" }),
      ...lines.map((line, at) => inkText(x + 3, y + above + (at + 0.5) * LINE_MM, line)),
      inkLine(
        [
          [x, y + heightMm],
          [x + widthMm, y + heightMm],
        ],
        { widthMm: RULE_MM.thin },
      ),
    ],
  };
}

function noteStrip(text: string, widthMm: number): Strip {
  const lines = wrapText(text, SIZE, widthMm - 2 * PAD_X_MM);
  return {
    heightMm: lines.length * LINE_MM + 2 * PAD_Y_MM,
    draw: (x, y) => lines.map((line, at) => inkText(x + PAD_X_MM, y + PAD_Y_MM + (at + 0.5) * LINE_MM, line)),
  };
}

function isTick(cell: Cell): boolean {
  return typeof cell !== "string" && cell.blank === "tick";
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
