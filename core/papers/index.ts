import { changeLog } from "./change-log.ts";
import { crimpSheet } from "./crimp-sheet.ts";
import { cutList } from "./cut-list.ts";
import { drawing } from "./drawing.ts";
import { faultCard } from "./fault-card.ts";
import { hotAtRest } from "./hot-at-rest.ts";
import { labels } from "./labels.ts";
import { legend } from "./legend.ts";
import { loadSheet } from "./load-sheet.ts";
import { measureFirst } from "./measure-first.ts";
import type { Paper } from "./paper.ts";
import { partsList } from "./parts-list.ts";
import { testSheet } from "./test-sheet.ts";

export { builtBefore, drawingOfRevision, withBuilt } from "./built-revision.ts";
export { compare, type Comparison } from "./comparison.ts";
export { circuitInPayload, circuitPayload, holdsPayload } from "./code/payload.ts";
export { circuitForPdf, circuitInPdf } from "./circuit-in-pdf.ts";
export { circuitInSvg } from "./circuit-in-svg.ts";
export { paperSizeMm } from "./layout/index.ts";
export * from "./paper.ts";
export { testSteps } from "./test-sheet.ts";
export { isAt, passes, type MeterPoint, type TestRow, type TestStep } from "./testing/test-step.ts";

/** Every paper, in the order a job needs them. */
export const papers: readonly Paper[] = [
  drawing,
  legend,
  hotAtRest,
  measureFirst,
  partsList,
  cutList,
  crimpSheet,
  labels,
  testSheet,
  loadSheet,
  faultCard,
  changeLog,
];

/** The paper of this kind; `null` for a kind that is none. */
export function paperOf(kind: string): Paper | null {
  return papers.find((paper) => paper.kind === kind) ?? null;
}
