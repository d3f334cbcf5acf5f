import { csv } from "./csv.ts";
import { headingBlock, paragraphBlock, tableBlock, TICK, type Row } from "./layout/index.ts";
import { orderRows, spareFuses, type OrderRow } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";

/** What to buy, in words any counter understands. */
export const partsList: Paper = {
  kind: "parts-list",
  title: "Parts list",
  about: "A shopping order in trade words: how many, which rating, where used, and what may be taken instead.",
  media: "text/csv",
  extension: "csv",
  make: (source) =>
    csv([
      ["quantity", "what", "rating", "where_used", "substitute"],
      ...allRows(source).map(({ quantity, what, rating, where, instead }) => [
        quantity,
        plain(what),
        plain(rating),
        plain(where),
        plain(instead),
      ]),
    ]),
  pages: partsPages,
};

function partsPages(source: PaperSource, options: PaperOptions): string[] {
  const rows = allRows(source).map(({ quantity, what, rating, where, instead }): Row => ({
    cells: [TICK, `${quantity}`, what, rating, where, instead],
  }));
  const columns = [
    { head: "" },
    { head: "Qty", align: "end" as const },
    { head: "What" },
    { head: "Rating" },
    { head: "Where used", grow: 1 },
    { head: "What may be taken instead", grow: 1 },
  ];
  return printed(partsList.title, source.document, options, (widthMm) => [
    headingBlock("To order", widthMm),
    tableBlock({ columns, rows, none: "Nothing is drawn." }, widthMm),
    paragraphBlock(
      "Wire by size and colour stands in the cut list. Ratings are what is needed; a maker's data sheet decides.",
      widthMm,
    ),
  ]);
}

function allRows(source: PaperSource): OrderRow[] {
  return [...orderRows(source), ...spareFuses(source)];
}

function plain(text: string): string {
  return text.replaceAll("\u00a0", " ");
}
