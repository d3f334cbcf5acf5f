import type { Edit, GridPoint, Part } from "../../core/document/index.ts";
import { unionBox, type Box } from "../../core/geometry/index.ts";
import { tidyUp } from "../../core/placing/index.ts";
import { documentOf, type EditorState } from "../store/editor-state.ts";
import { partName } from "../store/part-view.ts";
import { counted, type Command, type Plan } from "./command.ts";
import { boxOf, centreOf, placeOf } from "./standing.ts";

type Turn = NonNullable<Part["turn"]>;
type Axis = "x" | "y";

export const arrangeCommands: readonly Command[] = [
  {
    id: "turn",
    title: "Turn right",
    short: "Turn",
    group: "Arrange",
    keys: ["R"],
    words: "rotate clockwise",
    plan: (state) => turn(state, 90),
  },
  {
    id: "turn-back",
    title: "Turn left",
    group: "Arrange",
    keys: ["Shift+R"],
    words: "rotate",
    plan: (state) => turn(state, 270),
  },
  {
    id: "flip",
    title: "Flip left and right",
    short: "Flip",
    group: "Arrange",
    keys: ["F"],
    words: "mirror",
    plan: flip,
  },
  ...nudges(),
  align("align-left", "Line up left edges", "Left edges", (box, all) => [all.left - box.left, 0]),
  align("align-centre", "Line up centres, one above the other", "Centres, stacked", (box, all) => [
    centreOf(all)[0] - centreOf(box)[0],
    0,
  ]),
  align("align-right", "Line up right edges", "Right edges", (box, all) => [all.right - box.right, 0]),
  align("align-top", "Line up top edges", "Top edges", (box, all) => [0, all.top - box.top]),
  align("align-middle", "Line up centres, side by side", "Centres, in a row", (box, all) => [
    0,
    centreOf(all)[1] - centreOf(box)[1],
  ]),
  align("align-bottom", "Line up bottom edges", "Bottom edges", (box, all) => [0, all.bottom - box.bottom]),
  {
    id: "space-across",
    title: "Space evenly across",
    group: "Arrange",
    words: "distribute",
    plan: (state) => spaceEvenly(state, "x"),
  },
  {
    id: "space-down",
    title: "Space evenly down",
    group: "Arrange",
    words: "distribute",
    plan: (state) => spaceEvenly(state, "y"),
  },
  {
    id: "tidy",
    title: "Tidy up the whole drawing",
    group: "Arrange",
    words: "layout arrange automatic",
    plan: tidy,
    reason: (state) => (documentOf(state).parts.length === 0 ? "The drawing is empty" : null),
  },
];

function selectedParts(state: EditorState): readonly Part[] {
  return documentOf(state).parts.filter((part) => state.selection.has(part.id));
}

function moved(label: string, parts: readonly Part[], change: (part: Part) => Partial<Part>): Plan {
  const what = parts.length === 1 ? partName(parts[0]!) : counted(parts.length, "part");
  const edits = parts.map((part): Edit => ({ op: "set-part", id: part.id, change: change(part) }));
  return { transaction: { label: `${label} ${what}`, edits } };
}

const NO_PART: Plan = { reason: "No part is selected" };

function turn(state: EditorState, by: 90 | 270): Plan {
  const parts = selectedParts(state);
  if (parts.length === 0) return NO_PART;
  // About the first part's own place: whole steps stay whole, and four turns come back exactly.
  const [cx, cy] = placeOf(parts[0]!);
  return moved("Turn", parts, (part) => {
    const turned = (((part.turn ?? 0) + by) % 360) as Turn;
    if (parts.length === 1) return { turn: turned };
    const [x, y] = placeOf(part);
    return { turn: turned, at: by === 90 ? [cx + cy - y, cy + x - cx] : [cx + y - cy, cy + cx - x] };
  });
}

function flip(state: EditorState): Plan {
  const parts = selectedParts(state);
  if (parts.length === 0) return NO_PART;
  const across = parts.map((part) => placeOf(part)[0]);
  const mirror = Math.min(...across) + Math.max(...across);
  return moved("Flip", parts, (part) => {
    const [x, y] = placeOf(part);
    const flipped = { flip: !part.flip, turn: ((360 - (part.turn ?? 0)) % 360) as Turn };
    return parts.length === 1 ? flipped : { ...flipped, at: [mirror - x, y] };
  });
}

function nudges(): Command[] {
  const ways: readonly [string, string, number, number][] = [
    ["left", "ArrowLeft", -1, 0],
    ["right", "ArrowRight", 1, 0],
    ["up", "ArrowUp", 0, -1],
    ["down", "ArrowDown", 0, 1],
  ];
  const command = (name: string, key: string, dx: number, dy: number, far: boolean): Command => ({
    id: `nudge-${name}${far ? "-far" : ""}`,
    title: `Move ${name} ${far ? "5 steps" : "1 step"}`,
    group: "Arrange",
    keys: [far ? `Shift+${key}` : key],
    plan: (state) => {
      return nudge(state, far ? [dx * 5, dy * 5] : [dx, dy]);
    },
  });
  return ways.flatMap(([name, key, dx, dy]) => [command(name, key, dx, dy, false), command(name, key, dx, dy, true)]);
}

/** Notes go along with parts. */
function nudge(state: EditorState, [dx, dy]: GridPoint): Plan {
  const parts = selectedParts(state);
  const { notes = [] } = documentOf(state);
  const [only] = notes.filter((note) => state.selection.has(note.id));
  if (parts.length === 0 && only === undefined) return NO_PART;
  const edits = parts.map((part): Edit => {
    const [x, y] = placeOf(part);
    return { op: "set-part", id: part.id, change: { at: [x + dx, y + dy] } };
  });
  const stand = notes.map((note) =>
    state.selection.has(note.id) ? { ...note, at: [note.at[0] + dx, note.at[1] + dy] as const } : note,
  );
  if (only !== undefined) edits.push({ op: "set-notes", notes: stand });
  const count = state.selection.size;
  const what = count > 1 ? `${count} things` : parts[0] ? partName(parts[0]) : `note ${only!.id.toUpperCase()}`;
  return { transaction: { label: `Move ${what}`, edits } };
}

function align(id: string, title: string, short: string, shift: (box: Box, all: Box) => GridPoint): Command {
  const plan = (state: EditorState): Plan => {
    const parts = selectedParts(state);
    if (parts.length < 2) return { reason: "Select two parts or more" };
    const all = parts.map(boxOf).reduce(unionBox);
    return moved("Line up", parts, (part) => {
      const [x, y] = placeOf(part);
      const [dx, dy] = shift(boxOf(part), all);
      return { at: [Math.round(x + dx), Math.round(y + dy)] };
    });
  };
  return { id, title, short, group: "Arrange", words: "align", plan };
}

/** The outermost stay; the centres of the rest spread between them. */
function spaceEvenly(state: EditorState, axis: Axis): Plan {
  const parts = selectedParts(state);
  if (parts.length < 3) return { reason: "Select three parts or more" };
  const along = axis === "x" ? 0 : 1;
  const middle = (part: Part) => centreOf(boxOf(part))[along];
  const inOrder = parts.toSorted((a, b) => middle(a) - middle(b));
  const first = middle(inOrder[0]!);
  const gap = (middle(inOrder.at(-1)!) - first) / (parts.length - 1);
  return moved("Space evenly", inOrder, (part) => {
    const shift = Math.round(first + gap * inOrder.indexOf(part) - middle(part));
    const [x, y] = placeOf(part);
    return { at: axis === "x" ? [x + shift, y] : [x, y + shift] };
  });
}

function tidy(state: EditorState): Plan {
  const document = documentOf(state);
  return { transaction: { label: "Tidy up", edits: tidyUp(document) }, effects: [{ do: "reveal", places: [] }] };
}
