import { controlsOf, positionAfter } from "../store/controls-of.ts";
import { documentOf, type EditorState } from "../store/editor-state.ts";
import { effect, type Command, type Plan } from "./command.ts";

export const operateCommands: readonly Command[] = [
  {
    id: "flick",
    title: "Operate the selected control",
    group: "Operate",
    keys: ["X"],
    words: "flick switch",
    plan: flickSelected,
  },
  {
    id: "all-at-rest",
    title: "All controls at rest",
    group: "Operate",
    keys: ["`"],
    words: "off key out rest situation",
    plan: (state) =>
      Object.keys(state.positions).length === 0
        ? { reason: "Everything is at rest" }
        : effect({ do: "stand", positions: {} }),
  },
];

const NUMBER_KEYS = 9;

/** One command for each control of the drawing, the first nine on the number keys, and one for each saved situation. */
export function operateCommandsFor(state: EditorState): readonly Command[] {
  const document = documentOf(state);
  const controls = controlsOf(document).map((control, index): Command => ({
    id: `flick ${control.id}`,
    title: `${control.name}: ${positionAfter(control, state.positions[control.id])}`,
    group: "Operate",
    ...(index < NUMBER_KEYS && { keys: [String(index + 1)] }),
    words: `flick operate ${control.noun}`,
    plan: () => effect({ do: "flick", control: control.id }),
  }));
  const situations = (document.situations ?? []).map((situation): Command => ({
    id: `situation ${situation.id}`,
    title: `Situation: ${situation.name ?? situation.id}`,
    group: "Operate",
    plan: () => effect({ do: "stand", positions: situation.set ?? {} }),
  }));
  return [...controls, ...situations];
}

function flickSelected(state: EditorState): Plan {
  const controls = controlsOf(documentOf(state)).filter((control) => state.selection.has(control.id));
  if (controls.length === 0) return { reason: "No switch, key or feed is selected" };
  return effect(...controls.map((control) => ({ do: "flick" as const, control: control.id })));
}
