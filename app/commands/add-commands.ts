import { systemOf, type Document, type Edit, type GridPoint, type Part } from "../../core/document/index.ts";
import { boxesTouch, growBox, moveBox, type Box } from "../../core/geometry/index.ts";
import { PART_KINDS, settingsOf, type PartKind } from "../../core/parts/index.ts";
import { documentOf, type EditorState } from "../store/editor-state.ts";
import { nextId } from "../store/ids.ts";
import { placeName } from "../store/part-facts.ts";
import { effect, type Command, type Plan } from "./command.ts";
import { boxOf, centreOf } from "./standing.ts";

/** One command for each kind of part, and drawing a wire by keys. */
export const addCommands: readonly Command[] = [
  { id: "wire", title: "Draw a wire", group: "Add", keys: ["W"], words: "connect lead cable join", plan: startWire },
  ...PART_KINDS.map(
    (kind): Command => ({
      id: `add ${kind.kind}`,
      title: `Add ${kind.title.toLowerCase()}`,
      group: "Add",
      words: kind.words.join(" "),
      plan: (state) => addPart(state, kind),
    }),
  ),
];

/** A part of this kind on a free spot as near as can be to the middle of the Board. */
export function addPart(state: EditorState, kind: PartKind): Plan {
  const document = documentOf(state);
  const part = freshPart(document, kind);
  const at = freeSpot(document, kind.bounds(settingsOf(part)), middleOfBoard(state));
  return {
    transaction: {
      label: `Add ${kind.title.toLowerCase()} ${part.id.toUpperCase()}`,
      edits: [{ op: "add-part", part: { ...part, at } }],
    },
    select: [part.id],
  };
}

/** A new part of this kind under the next free id, with what the drawing's voltage asks for. */
export function freshPart(document: Document, kind: PartKind): Part {
  const props = kind.fresh?.(systemOf(document).nominalV) ?? {};
  return { id: nextId(document, kind.letter), kind: kind.kind, ...(Object.keys(props).length > 0 && { props }) };
}

/** A wire between two terminals, sizes and length left for the person to say. */
export function addWire(state: EditorState, from: string, to: string): Plan {
  const document = documentOf(state);
  if (from === to) return { reason: "A wire needs two terminals" };
  const id = nextId(document, "w");
  const edit: Edit = { op: "add-wire", wire: { id, from, to } };
  const label = `Wire from ${placeName(document, from)} to ${placeName(document, to)}`;
  return { transaction: { label, edits: [edit] }, select: [id], effects: [{ do: "wire-from", terminal: null }] };
}

function startWire(state: EditorState): Plan {
  if (documentOf(state).parts.length < 2) return { reason: "A wire needs two parts" };
  return effect({ do: "show", place: "wire-to" });
}

function middleOfBoard({ view, boardSize }: EditorState): GridPoint {
  return [(boardSize.width / 2 - view.x) / view.scale, (boardSize.height / 2 - view.y) / view.scale];
}

/** Room left around a part for its lettering and its wires, grid steps. */
const ROOM = 2;
const MOST_RINGS = 60;

/** The first place, in growing squares around `near`, where the box stands clear of all parts. */
function freeSpot(document: Document, box: Box, near: GridPoint): GridPoint {
  const taken = document.parts.map((part) => growBox(boxOf(part), ROOM));
  const [cx, cy] = centreOf(box);
  const origin: GridPoint = [Math.round(near[0] - cx), Math.round(near[1] - cy)];
  for (let ring = 0; ring <= MOST_RINGS; ring += 1) {
    for (const [dx, dy] of ringOf(ring)) {
      const at: GridPoint = [origin[0] + dx * 2, origin[1] + dy * 2];
      const standing = moveBox(box, at[0], at[1]);
      if (!taken.some((other) => boxesTouch(other, standing))) return at;
    }
  }
  return origin;
}

/** Steps of a square ring, starting to the right. */
function ringOf(radius: number): GridPoint[] {
  if (radius === 0) return [[0, 0]];
  const steps: GridPoint[] = [];
  for (let i = -radius; i < radius; i += 1) steps.push([radius, i], [-i, radius], [-radius, -i], [i, -radius]);
  return steps.toSorted((a, b) => Math.hypot(...a) - Math.hypot(...b));
}
