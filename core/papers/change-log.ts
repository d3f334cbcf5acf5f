import { headingBlock, paragraphBlock, tableBlock, WRITE, type Block, type Row } from "./layout/index.ts";
import { changeRows } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";

/** The back of the card: what changed since the last revision, and lines for the next pen. */
export const changeLog: Paper = {
  kind: "change-log",
  title: "Change log",
  about: "What changed since the revision before, and blank lines for changes made with a pen.",
  media: "image/svg+xml",
  extension: "svg",
  make: (source, options) => changePages(source, options)[0]!,
  pages: changePages,
};

const BLANK_LINES = 6;
const BLANK_MM = 10;

function changePages(source: PaperSource, options: PaperOptions): string[] {
  return printed(changeLog.title, source.document, options, (widthMm) => [
    ...differenceBlocks(source, widthMm),
    headingBlock("Changes made with a pen", widthMm),
    blankTable(widthMm),
    paragraphBlock(
      "Bring each of these back into the drawing, give it the next revision, and print the card anew.",
      widthMm,
    ),
  ]);
}

function differenceBlocks({ document, previous }: PaperSource, widthMm: number): Block[] {
  const now = document.sheet?.revision ?? "";
  if (!previous) {
    return [
      paragraphBlock(
        `Revision ${now === "" ? "not stated" : now}. No earlier revision was given to compare with.`,
        widthMm,
      ),
    ];
  }
  const rows = changeRows(previous, document).map(({ what, id, how }): Row => ({ cells: [what, id, how] }));
  const columns = [{ head: "Change" }, { head: "Id" }, { head: "What", grow: 1 }];
  return [
    headingBlock(`From revision ${previous.sheet?.revision ?? "?"} to ${now === "" ? "?" : now}`, widthMm),
    tableBlock({ columns, rows, none: "Nothing that matters on the vehicle changed." }, widthMm),
  ];
}

function blankTable(widthMm: number): Block {
  const columns = [
    { head: "Date", leastMm: 24 },
    { head: "Change", grow: 3, leastMm: 60 },
    { head: "Wires added or removed", grow: 1, leastMm: 40 },
    { head: "Who", leastMm: 18 },
  ];
  const rows = Array.from({ length: BLANK_LINES }, (): Row => ({ cells: columns.map(() => WRITE) }));
  return tableBlock({ columns, rows, leastRowMm: BLANK_MM }, widthMm);
}
