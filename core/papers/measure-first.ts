import { paragraphBlock, tableBlock, WRITE, type Row } from "./layout/index.ts";
import { measureGroups } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";

/** One page to take to the vehicle before work. */
export const measureFirst: Paper = {
  kind: "measure-first",
  title: "Measure first",
  about: "What to find out on the vehicle before a wire is cut: every guess and every gap of the drawing.",
  media: "image/svg+xml",
  extension: "svg",
  make: (source, options) => measurePages(source, options)[0]!,
  pages: measurePages,
};

function measurePages(source: PaperSource, options: PaperOptions): string[] {
  const rows = measureGroups(source).flatMap(({ title, rows: group }): Row[] => [
    { band: title },
    ...group.map(({ what, how, expect }): Row => ({ cells: [what, how, expect, WRITE] })),
  ]);
  const columns = [
    { head: "What" },
    { head: "Find out", grow: 1 },
    { head: "As drawn" },
    { head: "Found", leastMm: 26 },
  ];
  return printed(measureFirst.title, source.document, options, (widthMm) => [
    paragraphBlock(
      "Colours lie: measure. Never pierce insulation; probe at connectors and fuses. Keep off airbag circuits.",
      widthMm,
    ),
    tableBlock({ columns, rows, none: "The drawing leaves nothing open.", leastRowMm: 9 }, widthMm),
  ]);
}
