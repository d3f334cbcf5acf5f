import type { Snag } from "../../core/rules/index.ts";
import type { EditorState } from "../store/editor-state.ts";
import type { Command, Plan } from "./command.ts";

export const snagCommands: readonly Command[] = [
  { id: "next-snag", title: "Next snag", group: "Snags", keys: ["N"], plan: (state) => stepTo(state, 1) },
  { id: "previous-snag", title: "Snag before", group: "Snags", keys: ["Shift+N"], plan: (state) => stepTo(state, -1) },
  {
    id: "remedy",
    title: "Carry out the first remedy of the chosen snag",
    group: "Snags",
    keys: ["A"],
    words: "fix mend apply",
    plan: firstRemedy,
  },
];

/** Tells snags apart from one report to the next. */
export function snagKey(snag: Snag): string {
  return `${snag.rule} ${snag.at.join(" ")}`;
}

/** Shows a snag's place on the Board and marks it as chosen. */
export function choosing(snag: Snag): Plan {
  return {
    effects: [
      { do: "spotlight", places: snag.at, snag: snagKey(snag) },
      { do: "reveal", places: snag.at },
    ],
    say: snag.text,
  };
}

/** The edits of one remedy as a step to undo. */
export function remedyPlan(remedy: Snag["remedies"][number]): Plan {
  if (remedy.edits.length === 0) return { reason: "This one is for hands: it can't be done on the drawing" };
  return {
    transaction: { label: remedy.text, edits: remedy.edits },
    effects: [{ do: "spotlight", places: [], snag: null }],
  };
}

function stepTo(state: EditorState, by: 1 | -1): Plan {
  const snags = state.report?.snags ?? [];
  if (snags.length === 0) return { reason: state.report ? "There are no snags" : "The analysis is not done yet" };
  const now = snags.findIndex((snag) => snagKey(snag) === state.chosenSnag);
  const next = now < 0 ? (by > 0 ? 0 : snags.length - 1) : (now + by + snags.length) % snags.length;
  const plan = choosing(snags[next]!);
  return "reason" in plan ? plan : { ...plan, say: `Snag ${next + 1} of ${snags.length}: ${snags[next]!.text}` };
}

function firstRemedy(state: EditorState): Plan {
  const snag = state.report?.snags.find((one) => snagKey(one) === state.chosenSnag);
  if (snag === undefined) return { reason: "No snag is chosen" };
  const remedy = snag.remedies.find((one) => one.edits.length > 0);
  if (remedy === undefined) return { reason: "None of its remedies can be done on the drawing" };
  if (state.reportRevision !== state.revision) return { reason: "The analysis is not done yet" };
  return remedyPlan(remedy);
}
