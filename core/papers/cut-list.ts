import { csv } from "./csv.ts";
import { headingBlock, paragraphBlock, tableBlock, TICK, type Block, type Row } from "./layout/index.ts";
import { ALLOWANCE_M, cutRows, cutTotals, endWords, SPARE_SHARE, type CutRow, type CutTotal } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";
import { bothLengths, bothSizes, colourWords, stripMm, terminalName, wireName } from "./words/index.ts";

/** What to cut from which reel. */
export const cutList: Paper = {
  kind: "cut-list",
  title: "Cut list",
  about: "Every wire by size, colour and length: what to cut, how far to strip, which terminals; and how much to buy.",
  media: "text/csv",
  extension: "csv",
  make: (source) => cutCsv(source),
  pages: cutPages,
};

const FEET_PER_M = 1 / 0.3048;
/** What stands in a column of the file: of a wire, and of the total of a size and colour; absent: nothing. */
interface CsvColumn {
  readonly head: string;
  wire(row: CutRow): string | number | null;
  total?(total: CutTotal): string | number | null;
}

const COLUMNS: readonly CsvColumn[] = [
  { head: "wire", wire: ({ wire }) => wire.wire.id, total: () => "total" },
  { head: "label", wire: ({ wire }) => wire.wire.label ?? "", total: totalWords },
  { head: "size", wire: ({ wire }) => wire.wire.size ?? "", total: ({ size }) => size },
  { head: "area_mm2", wire: ({ wire }) => rounded(wire.areaMm2) },
  { head: "colour", wire: ({ wire }) => wire.wire.colour ?? "", total: ({ colour }) => colour },
  { head: "route_m", wire: ({ routeM }) => routeM },
  { head: "allowance_m", wire: () => ALLOWANCE_M },
  { head: "cut_m", wire: ({ cutM }) => rounded(cutM), total: ({ cutM }) => rounded(cutM) },
  { head: "cut_ft", wire: ({ cutM }) => feet(cutM), total: ({ cutM }) => feet(cutM) },
  { head: "with_spare_m", wire: () => null, total: ({ withSpareM }) => rounded(withSpareM) },
  { head: "strip_mm", wire: ({ wire }) => stripMm(wire.areaMm2) },
  { head: "from", wire: ({ wire }) => wire.wire.from },
  { head: "terminal_from", wire: ({ wire }) => endWords(wire.from, wire) },
  { head: "to", wire: ({ wire }) => wire.wire.to },
  { head: "terminal_to", wire: ({ wire }) => endWords(wire.to, wire) },
];

/** One row per wire, then one per size and colour with the spare to buy. */
function cutCsv(source: PaperSource): string {
  const rows = cutRows(source);
  return csv([
    COLUMNS.map(({ head }) => head),
    ...rows.map((row) => COLUMNS.map(({ wire }) => wire(row))),
    ...cutTotals(rows).map((each) => COLUMNS.map(({ total }) => total?.(each) ?? null)),
  ]);
}

function totalWords({ count, unknown }: CutTotal): string {
  return `${count} ${count === 1 ? "wire" : "wires"}${unknown > 0 ? `, ${unknown} of unknown length` : ""}`;
}

function cutPages(source: PaperSource, options: PaperOptions): string[] {
  const rows = cutRows(source);
  const { sizes } = source.netlist.system;
  return printed(cutList.title, source.document, options, (widthMm) => [
    cutTable(rows, sizes, widthMm),
    headingBlock("How much to buy", widthMm),
    totalTable(cutTotals(rows), sizes, widthMm),
    paragraphBlock(
      `Cut length is the route and ${ALLOWANCE_M} m for the final trim. Lengths to buy hold ${SPARE_SHARE * 100} % spare. Strip lengths are the usual ones: the terminal maker's sheet comes first.`,
      widthMm,
    ),
  ]);
}

function cutTable(rows: readonly CutRow[], sizes: "awg" | "mm2", widthMm: number): Block {
  const bands = new Set<string>();
  const cells = rows.flatMap(({ wire, routeM, cutM }): Row[] => {
    const colour = wire.wire.colour === undefined ? "colour not stated" : colourWords(wire.wire.colour);
    const band = `${wire.wire.size === undefined ? "Size not stated" : bothSizes(wire)}, ${colour}`;
    const isFirst = !bands.has(band);
    bands.add(band);
    const strip = stripMm(wire.areaMm2);
    const row: Row = {
      cells: [
        TICK,
        wireName(wire.wire),
        bothLengths(cutM, sizes),
        bothLengths(routeM, sizes),
        strip === null ? "" : `${strip}`,
        `${terminalName(wire.from)}: ${endWords(wire.from, wire)}`,
        `${terminalName(wire.to)}: ${endWords(wire.to, wire)}`,
      ],
    };
    return isFirst ? [{ band }, row] : [row];
  });
  const columns = [
    { head: "" },
    { head: "Wire" },
    { head: "Cut" },
    { head: "Route" },
    { head: "Strip mm", align: "end" as const },
    { head: "From, and what ends it", grow: 1 },
    { head: "To, and what ends it", grow: 1 },
  ];
  return tableBlock({ columns, rows: cells, none: "No wire is drawn." }, widthMm);
}

function totalTable(totals: readonly CutTotal[], sizes: "awg" | "mm2", widthMm: number): Block {
  const rows = totals.map(({ size, colour, count, cutM, withSpareM, unknown }): Row => ({
    cells: [
      TICK,
      size === "not stated" ? size : size.replace("mm2", "mm²"),
      colour === "not stated" ? colour : colourWords(colour),
      `${count}`,
      bothLengths(cutM, sizes),
      `${bothLengths(withSpareM, sizes)}${unknown > 0 ? `, and ${unknown} of unknown length` : ""}`,
    ],
  }));
  const columns = [
    { head: "" },
    { head: "Size" },
    { head: "Colour", grow: 1 },
    { head: "Wires", align: "end" as const },
    { head: "Cut lengths" },
    { head: "To buy", grow: 1 },
  ];
  return tableBlock({ columns, rows, none: "Nothing." }, widthMm);
}

function rounded(value: number | null): number | null {
  return value === null ? null : Math.round(value * 1000) / 1000;
}

function feet(lengthM: number | null): number | null {
  return lengthM === null ? null : Math.round(lengthM * FEET_PER_M * 100) / 100;
}
