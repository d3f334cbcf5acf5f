import { systemOf, type Edit, type Part } from "../../../core/document/index.ts";
import type { Point } from "../../../core/geometry/index.ts";
import { kindOf } from "../../../core/parts/index.ts";
import { partPicture } from "../../../core/picture/index.ts";
import { letterOf } from "../../bench/own-kind.ts";
import { nextId } from "../../store/ids.ts";
import { NO_OVERLAY } from "../board-overlay.ts";
import { insertEdits, type Insertion, insertionOf } from "./insert-part.ts";
import type { Act, Sheet, Step, Tool } from "./tool.ts";

/**
 * Puts down the part in hand, from a drag off the Shelf or by a tap. It hangs by its middle under the pointer; let go over a
 * wire it fits into, it is put into it. R turns it, F flips it, Escape gives it up. Shift keeps another one in hand.
 */
interface PlaceState {
  readonly pointer: Point | null;
}

const EMPTY: PlaceState = { pointer: null };

export const placeTool: Tool<PlaceState> = {
  start: EMPTY,
  step(_state, event, sheet) {
    if (sheet.placing === null || event.type === "leave") return shown(EMPTY, sheet, []);
    if (event.type === "cancel") return shown(EMPTY, sheet, givenUp());
    if (event.type === "key") return onKey(_state, event.key, sheet);
    if (event.type === "menu") return shown(EMPTY, sheet, givenUp());
    const state = { pointer: event.at };
    if (event.type !== "up") return shown(state, sheet, []);
    return shown(event.isAdding ? state : EMPTY, sheet, putDown(event.at, sheet, event.isAdding));
  },
};

function onKey(state: PlaceState, key: string, sheet: Sheet): Step<PlaceState> {
  if (sheet.placing === null) return shown(state, sheet, []);
  const { part } = sheet.placing;
  const held = (change: Pick<Part, "turn" | "flip">): Act => {
    return { act: "placing", placing: { ...sheet.placing!, part: { ...part, ...change } } };
  };
  if (key === "Escape") return shown(EMPTY, sheet, givenUp());
  if (key === "r") return shown(state, sheet, [held({ turn: (((part.turn ?? 0) + 90) % 360) as 0 | 90 | 180 | 270 })]);
  if (key === "f") return shown(state, sheet, [held({ flip: part.flip !== true })]);
  return shown(state, sheet, []);
}

function givenUp(): Act[] {
  return [
    { act: "placing", placing: null },
    { act: "tool", tool: "select" },
  ];
}

function shown(state: PlaceState, sheet: Sheet, acts: readonly Act[]): Step<PlaceState> {
  if (state.pointer === null || sheet.placing === null) return { state, overlay: NO_OVERLAY, acts, cursor: "copy" };
  const { part, insertion } = heldAt(state.pointer, sheet);
  const ghost = insertion?.picture ?? partPicture(part, systemOf(sheet.document).nominalV);
  const attract = insertion === null ? null : insertion.cut.at;
  return { state, overlay: { ...NO_OVERLAY, ghost, attract }, acts, cursor: "copy" };
}

function putDown(pointer: Point, sheet: Sheet, another: boolean): Act[] {
  const { part, insertion } = heldAt(pointer, sheet);
  const placed = insertion?.part ?? part;
  const edits: Edit[] = [{ op: "add-part", part: placed }];
  if (insertion !== null) edits.push(...insertEdits(insertion, sheet.document, sheet.scene, [placed.id]));
  const label = `Add ${kindOf(placed.kind)?.title.toLowerCase() ?? placed.kind} ${placed.id.toUpperCase()}`;
  const acts: Act[] = [{ act: "dispatch", transaction: { label, edits } }];
  return another ? acts : [...acts, ...givenUp(), { act: "select", ids: [placed.id] }];
}

/** The part in hand with its middle under the pointer, on whole grid steps. */
function heldAt(pointer: Point, sheet: Sheet): { readonly part: Part; readonly insertion: Insertion | null } {
  const { nominalV } = systemOf(sheet.document);
  const inHand = sheet.placing!.part;
  const id = nextId(sheet.document, letterOf(inHand));
  const { box } = partPicture({ ...inHand, id }, nominalV);
  const at: [number, number] = [
    Math.round(pointer[0] - (box.left + box.right) / 2),
    Math.round(pointer[1] - (box.top + box.bottom) / 2),
  ];
  const part: Part = { ...inHand, id, at };
  return { part, insertion: insertionOf(part, sheet.scene, nominalV) };
}
