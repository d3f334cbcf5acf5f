import type { EditorState } from "./editor-state.ts";

/** A line for a person's first minutes. */
export interface Hint {
  readonly id: string;
  readonly text: string;
  /** Whether there is anything here that it could be about. */
  readonly isApt: (state: EditorState) => boolean;
  /** The person has done it: nobody need say it again. */
  readonly isDone: (state: EditorState) => boolean;
}

const HINTS: readonly Hint[] = [
  { id: "words", text: "You say", isApt: () => true, isDone: () => false },
  {
    id: "flick",
    text: "Flick one of the Controls: what turns live shows on the Board at once.",
    isApt: () => true,
    isDone: ({ positions }) => Object.keys(positions).length > 0,
  },
  {
    id: "snag",
    text: "Choose a snag: it shows the place, and what puts it right.",
    isApt: ({ report }) => (report?.snags.length ?? 0) > 0,
    isDone: ({ chosenSnag }) => chosenSnag !== null,
  },
  {
    id: "draw",
    text: "Drag parts from the Shelf, and from terminal to terminal for a wire.",
    isApt: () => true,
    isDone: ({ history }) => history.past.length > 0,
  },
];

/** The first hint that was neither done nor closed and has something to be about; `null`: none is left. */
export function nextHint(state: EditorState): Hint | null {
  const { seen } = state.preferences;
  return HINTS.find((hint) => !seen.includes(hint.id) && hint.isApt(state)) ?? null;
}
