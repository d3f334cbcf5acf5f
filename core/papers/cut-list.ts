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
const HEAD = ["wire", "label", "size", "area_mm2", "colour", "route_m", "allowance_m", "cut_m", "cut_ft"];
const END_HEAD = ["strip_from_mm", "strip_to_mm", "terminal_from", "terminal_to", "from", "to"];

/** One row per wire, then one per size and colour with the spare in it. */
function cutCsv(source: PaperSource): string {
  const rows = cutRows(source);
  const wires = rows.map((row) => {
    const { wire, routeM, cutM } = row;
    const strip = stripMm(wire.areaMm2);
    const { id, label, size, colour, from, to } = wire.wire;
    return [
      ...[
        id,
        label ?? "",
        size ?? "",
        rounded(wire.areaMm2),
        colour ?? "",
        routeM,
        ALLOWANCE_M,
        rounded(cutM),
        feet(cutM),
      ],
      ...[strip, strip, endWords(wire.from, wire), endWords(wire.to, wire), from, to],
    ];
  });
  const totals = cutTotals(rows).map(({ size, colour, count, cutM, withSpareM, unknown }) => [
    ...[
      "total",
      `${count} wires${unknown > 0 ? `, ${unknown} of unknown length` : ""}`,
      size,
      null,
      colour,
      null,
      null,
    ],
    ...[
      rounded(cutM),
      feet(cutM),
      null,
      null,
      `with ${SPARE_SHARE * 100} % spare: ${rounded(withSpareM)} m`,
      null,
      null,
      null,
    ],
  ]);
  return csv([[...HEAD, ...END_HEAD], ...wires, ...totals]);
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
