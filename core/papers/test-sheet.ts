import type { TakenReading } from "../document/index.ts";
import { formatNumber } from "../units/index.ts";
import { paragraphBlock, tableBlock, WRITE, type Block, type Row } from "./layout/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { printed } from "./printed.ts";
import { deadSteps } from "./testing/dead-steps.ts";
import { codesStep, drainStep, heatStep } from "./testing/last-steps.ts";
import { chargeStep, functionSteps, restStep } from "./testing/live-steps.ts";
import { ampsSteps, dropSteps } from "./testing/loaded-steps.ts";
import { isAt, passes, type MeterPoint, type TestStep } from "./testing/test-step.ts";

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

/** Every step that has something to read, in the order they are done. */
export function testSteps(source: PaperSource): TestStep[] {
  return [
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
}

function testPages(source: PaperSource, options: PaperOptions): string[] {
  const steps = testSteps(source);
  return printed(testSheet.title, source.document, options, (widthMm) => [
    paragraphBlock(
      "Expected readings are worked out from the drawing. A wrong one means: stop, find out why, then go on.",
      widthMm,
    ),
    stepTable(steps, source, widthMm),
    paragraphBlock("Tested by, and date:", widthMm),
  ]);
}

/** All steps in one table, so that the columns stand under each other throughout. */
function stepTable(steps: readonly TestStep[], { document }: PaperSource, widthMm: number): Block {
  const rows = steps.flatMap(({ title, set, rows: readings }, at): Row[] => [
    { band: `${at + 1}  ${title}: ${set}` },
    ...readings.map(({ red, black, meter, expected, pass, look, point }, row): Row => ({
      cells: [
        `${at + 1}.${row + 1}`,
        red,
        black,
        meter,
        expected,
        pass,
        look,
        (point && takenWords(point, document.readings ?? [])) ?? WRITE,
      ],
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

/** What was read there last, and when; `null`: nothing yet. */
function takenWords(point: MeterPoint, readings: readonly TakenReading[]): string | null {
  const taken = readings.findLast((reading) => isAt(point, reading));
  if (!taken) return null;
  const unit = taken.meter === "ohm" ? "Ω" : taken.meter;
  const verdict = passes(point, taken.value) ? "" : ": NOT RIGHT";
  return `${formatNumber(taken.value)} ${unit}${verdict}${taken.date === undefined ? "" : `, ${taken.date}`}`;
}
