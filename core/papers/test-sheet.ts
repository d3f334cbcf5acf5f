import { paragraphBlock, tableBlock, WRITE, type Block, type Row } from "./layout/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";
import { deadSteps } from "./testing/dead-steps.ts";
import { codesStep, drainStep, heatStep } from "./testing/last-steps.ts";
import { chargeStep, functionSteps, restStep } from "./testing/live-steps.ts";
import { ampsSteps, dropSteps } from "./testing/loaded-steps.ts";
import type { TestStep } from "./testing/test-step.ts";

/** The proof with a meter, in the order it is done. */
export const testSheet: Paper = {
  kind: "test-sheet",
  title: "Test sheet",
  about:
    "Step by step with a meter: where the leads go, what it should read, when it passes, and where to look if not.",
  media: "image/svg+xml",
  extension: "svg",
  make: (source, options) => testPages(source, options)[0]!,
  pages: testPages,
};

const LEAST_ROW_MM = 9.5;

function testPages(source: PaperSource, options: PaperOptions): string[] {
  const steps = [
    ...deadSteps(source),
    restStep(source),
    ...functionSteps(source),
    ...dropSteps(source),
    ...ampsSteps(source),
    heatStep(),
    drainStep(source),
    chargeStep(source),
    codesStep(source),
  ].filter(({ rows }) => rows.length > 0);
  return printed(testSheet.title, source.document, options, (widthMm) => [
    paragraphBlock(
      "Expected readings are worked out from the drawing. A wrong one means: stop, find out why, then go on.",
      widthMm,
    ),
    stepTable(steps, widthMm),
    paragraphBlock("Tested by, and date:", widthMm),
  ]);
}

/** All steps in one table, so that the columns stand under each other throughout. */
function stepTable(steps: readonly TestStep[], widthMm: number): Block {
  const rows = steps.flatMap(({ title, set, rows: readings }, at): Row[] => [
    { band: `${at + 1}  ${title}: ${set}` },
    ...readings.map(({ red, black, meter, expected, pass, look }, row): Row => ({
      cells: [`${at + 1}.${row + 1}`, red, black, meter, expected, pass, look, WRITE],
    })),
  ]);
  const columns = [
    { head: "" },
    { head: "Red lead", grow: 1 },
    { head: "Black lead", grow: 1 },
    { head: "Set" },
    { head: "Expected" },
    { head: "Passes" },
    { head: "If not, look at", grow: 1 },
    { head: "Reading, initials", leastMm: 26 },
  ];
  return tableBlock({ columns, rows, leastRowMm: LEAST_ROW_MM }, widthMm);
}
