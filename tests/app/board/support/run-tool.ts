import type { Transaction } from "../../../../core/document/index.ts";
import { applyEdits } from "../../../../core/document/index.ts";
import type { BoardEvent } from "../../../../app/board/tools/board-event.ts";
import type { Act, Sheet, Step, Tool } from "../../../../app/board/tools/tool.ts";
import { sheetOf } from "./sheets.ts";

/** Runs events through a tool the way the Board does: what it asks for is done before the next event. */
export function run<S>(tool: Tool<S>, sheet: Sheet, events: readonly BoardEvent[]) {
  let now = sheet;
  const acts: Act[] = [];
  const steps: Step<S>[] = [];
  let state = tool.start;
  for (const event of events) {
    const step = tool.step(state, event, now);
    state = step.state;
    steps.push(step);
    acts.push(...step.acts);
    for (const act of step.acts) now = done(act, now);
  }
  const transactions = acts.flatMap((act): Transaction[] => (act.act === "dispatch" ? [act.transaction] : []));
  return { acts, steps, transactions, document: now.document, selection: now.selection, last: steps.at(-1)! };
}

function done(act: Act, sheet: Sheet): Sheet {
  if (act.act === "select") return { ...sheet, selection: new Set(act.ids) };
  if (act.act === "placing") return { ...sheet, placing: act.placing };
  if (act.act !== "dispatch") return sheet;
  const next = sheetOf(applyEdits(sheet.document, act.transaction.edits), [...sheet.selection]);
  return { ...next, placing: sheet.placing };
}
