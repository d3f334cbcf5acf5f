import { systemOf, type Edit } from "../../../core/document/index.ts";
import { boxOfPoints, type Point } from "../../../core/geometry/index.ts";
import { kindOf, settingsOf } from "../../../core/parts/index.ts";
import type { BoardTarget, ScreenPoint, View } from "../board-controller.ts";
import { NO_OVERLAY } from "../board-overlay.ts";
import type { PointerStep } from "./board-event.ts";
import { insertEdits, insertionOf } from "./insert-part.ts";
import { canJoin, joinEdits, type Joinable } from "./join.ts";
import { type Held, holdParts, liftHeld, moveHeld } from "./lift.ts";
import { NEAR_REACH, pick, pickInside } from "./picking.ts";
import type { Act, Cursor, Sheet, Step, Tool } from "./tool.ts";
import { type Grip, gripOf, gripOn, pulledGrip, letGoGrip } from "./wire-grip.ts";
import { draftRoute, joinableAt } from "./wire-draft.ts";

/**
 * Picks, moves, reshapes and flicks. A press waits until it is plain what it becomes: a tap selects (and flicks a control);
 * a drag moves what was selected, pulls a wire's run, corner or end, starts a wire at a terminal, or draws a marquee; a drag of one
 * finger over the bare sheet moves the view; a press held still opens the menu.
 */
type SelectState =
  | { readonly phase: "idle" }
  | { readonly phase: "pressed"; readonly press: Press }
  /** A press held until its menu opened: nothing more comes of it. */
  | { readonly phase: "spent" }
  | { readonly phase: "moving"; readonly press: Press; readonly held: Held }
  | { readonly phase: "marquee"; readonly press: Press }
  | { readonly phase: "panning"; readonly press: Press; readonly view: View }
  | { readonly phase: "wiring"; readonly from: Joinable }
  | { readonly phase: "pulling"; readonly grip: Grip };

interface Press {
  readonly at: Point;
  readonly screen: ScreenPoint;
  readonly target: BoardTarget;
  readonly grip: Grip | null;
  readonly isTouch: boolean;
  readonly isAdding: boolean;
  /** The control pressed down that springs back when let go. */
  readonly momentary: string | null;
}

const IDLE: SelectState = { phase: "idle" };
/** How far a pointer may stray and still tap. CSS pixels. */
const STRAY_PX = { mouse: 3, touch: 9 };

export const selectTool: Tool<SelectState> = {
  start: IDLE,
  step(state, event, sheet) {
    if (event.type === "key") return event.key === "Escape" ? calm(released(state)) : calm([], state);
    if (event.type === "cancel") return calm(released(state));
    if (event.type === "leave") return state.phase === "idle" ? calm([]) : calm([], state);
    if (event.type === "menu") return menu(event, sheet, released(state));
    if (event.type === "down") return pressed(event, sheet);
    if (event.type === "hold")
      return state.phase === "pressed" ? held(state.press, event, sheet) : continued(state, event, sheet);
    return event.type === "up" ? letGo(state, event, sheet) : continued(state, event, sheet);
  },
};

function calm(acts: readonly Act[], state: SelectState = IDLE): Step<SelectState> {
  return { state, overlay: NO_OVERLAY, acts, cursor: "default" };
}

function withActs(step: Step<SelectState>, before: readonly Act[]): Step<SelectState> {
  return { ...step, acts: [...before, ...step.acts] };
}

function released(state: SelectState): Act[] {
  const momentary = "press" in state ? state.press.momentary : null;
  return momentary === null ? [] : [{ act: "release", controlId: momentary }];
}

function targetAt(event: PointerStep, sheet: Sheet): BoardTarget {
  return pick(sheet.scene, event.at, sheet.view.scale, event.isTouch ? NEAR_REACH.touch : NEAR_REACH.mouse);
}

function pressed(event: PointerStep, sheet: Sheet): Step<SelectState> {
  const target = targetAt(event, sheet);
  const momentary = target.type === "part" && controlOf(target.id, sheet)?.momentary === true ? target.id : null;
  const press: Press = {
    at: event.at,
    screen: event.screen,
    target,
    grip: gripOf(event.at, sheet, event.isTouch),
    isTouch: event.isTouch,
    isAdding: event.isAdding,
    momentary,
  };
  return calm(momentary === null ? [] : [{ act: "flick", controlId: momentary }], { phase: "pressed", press });
}

function held(press: Press, event: PointerStep, sheet: Sheet): Step<SelectState> {
  // A mouse has its second button for the menu, and a finger on a push button is holding it down.
  if (!press.isTouch || press.momentary !== null) return calm([], { phase: "pressed", press });
  return { ...menu(event, sheet, released({ phase: "pressed", press })), state: { phase: "spent" } };
}

function menu(event: PointerStep, sheet: Sheet, before: readonly Act[]): Step<SelectState> {
  const target = targetAt(event, sheet);
  const id = selectableOf(target);
  const acts: Act[] = [...before];
  if (id !== null && !sheet.selection.has(id)) acts.push({ act: "select", ids: [id] });
  return calm([...acts, { act: "menu", at: event.screen, target }]);
}

function continued(state: SelectState, event: PointerStep, sheet: Sheet): Step<SelectState> {
  switch (state.phase) {
    case "idle":
      return hovering(event, sheet);
    case "spent":
      return calm([], state);
    case "pressed": {
      const stray = Math.hypot(event.screen.x - state.press.screen.x, event.screen.y - state.press.screen.y);
      const isTap = stray <= (event.isTouch ? STRAY_PX.touch : STRAY_PX.mouse);
      return isTap ? calm([], state) : dragBegun(state.press, event, sheet);
    }
    case "moving":
      return moving(state, event, sheet);
    case "marquee":
      return { ...calm([], state), overlay: { ...NO_OVERLAY, marquee: boxOfPoints([state.press.at, event.at]) } };
    case "panning": {
      const { press, view } = state;
      const moved = {
        ...view,
        x: view.x + event.screen.x - press.screen.x,
        y: view.y + event.screen.y - press.screen.y,
      };
      return { ...calm([{ act: "view", view: moved }], state), cursor: "grabbing" };
    }
    case "wiring":
      return wiring(state.from, event, sheet);
    case "pulling":
      return { state, overlay: pulledGrip(state.grip, event, sheet), acts: [], cursor: "grabbing" };
  }
}

function hovering(event: PointerStep, sheet: Sheet): Step<SelectState> {
  const target = targetAt(event, sheet);
  const isTerminal = target.type === "terminal";
  const overlay = {
    ...NO_OVERLAY,
    hover: isTerminal ? null : selectableOf(target),
    attract: isTerminal ? target.at : null,
  };
  const grip = gripOf(event.at, sheet, event.isTouch);
  const cursor: Cursor =
    grip !== null
      ? "grab"
      : isTerminal
        ? "crosshair"
        : target.type === "part" && controlOf(target.id, sheet)
          ? "pointer"
          : "default";
  return { state: IDLE, overlay: grip === null ? overlay : NO_OVERLAY, acts: [], cursor };
}

function dragBegun(press: Press, event: PointerStep, sheet: Sheet): Step<SelectState> {
  const { target } = press;
  if (press.grip !== null) return continued({ phase: "pulling", grip: press.grip }, event, sheet);
  if (target.type === "terminal") {
    return wiring({ on: "terminal", address: target.id, at: target.at }, event, sheet);
  }
  if (target.type === "part") {
    const isSelected = sheet.selection.has(target.id);
    const ids = isSelected
      ? new Set(
          [...sheet.document.parts, ...(sheet.document.notes ?? [])]
            .map(({ id }) => id)
            .filter((id) => sheet.selection.has(id)),
        )
      : new Set([target.id]);
    const step = moving({ phase: "moving", press, held: holdParts(sheet.document, ids) }, event, sheet);
    const picked: Act[] = isSelected ? [] : [{ act: "select", ids: [target.id] }];
    return withActs(step, [...released({ phase: "pressed", press }), ...picked]);
  }
  const grip = target.type === "wire" && !press.isTouch ? gripOn(target.id, press.at, sheet, false) : null;
  if (grip !== null)
    return withActs(continued({ phase: "pulling", grip }, event, sheet), [{ act: "select", ids: [target.id] }]);
  if (press.isTouch) return continued({ phase: "panning", press, view: sheet.view }, event, sheet);
  return continued({ phase: "marquee", press }, event, sheet);
}

function shiftOf(press: Press, event: PointerStep): [dx: number, dy: number] {
  return [Math.round(event.at[0] - press.at[0]), Math.round(event.at[1] - press.at[1])];
}

function moving(state: Extract<SelectState, { phase: "moving" }>, event: PointerStep, sheet: Sheet): Step<SelectState> {
  const [dx, dy] = shiftOf(state.press, event);
  const lift = liftHeld(state.held, sheet.scene, dx, dy);
  const insertion = insertionAfter(state.held, dx, dy, sheet);
  const overlay = { ...NO_OVERLAY, lift, attract: insertion?.cut.at ?? null };
  return { state, overlay, acts: [], cursor: "move" };
}

/** A lone part with no wires yet, held over a wire it fits into. */
function insertionAfter(held: Held, dx: number, dy: number, sheet: Sheet) {
  if (held.parts.size !== 1 || held.hidden.size !== 1) return null;
  const [id] = held.parts;
  const part = sheet.document.parts.find((each) => each.id === id);
  if (part === undefined) return null;
  const [x, y] = part.at ?? [0, 0];
  return insertionOf({ ...part, at: [x + dx, y + dy] }, sheet.scene, systemOf(sheet.document).nominalV);
}

function wiring(from: Joinable, event: PointerStep, sheet: Sheet): Step<SelectState> {
  const target = joinTarget(from, event, sheet);
  const draft = draftRoute(sheet.scene, from, [], target ?? event.at);
  const overlay = { ...NO_OVERLAY, draft, attract: target?.at ?? null };
  return { state: { phase: "wiring", from }, overlay, acts: [], cursor: "crosshair" };
}

function joinTarget(from: Joinable, event: PointerStep, sheet: Sheet): Joinable | null {
  const except = from.on === "terminal" ? from.address : undefined;
  const found = joinableAt(sheet.scene, event.at, sheet.view.scale, event.isTouch, except);
  return found !== null && canJoin(from, found) ? found : null;
}

function letGo(state: SelectState, event: PointerStep, sheet: Sheet): Step<SelectState> {
  switch (state.phase) {
    case "idle":
    case "spent":
    case "panning":
      return calm([]);
    case "pressed":
      return tapped(state.press, sheet);
    case "moving":
      return dropped(state, event, sheet);
    case "marquee": {
      const inside = pickInside(sheet.scene, boxOfPoints([state.press.at, event.at])!);
      return calm([{ act: "select", ids: state.press.isAdding ? toggled(sheet.selection, inside) : inside }]);
    }
    case "wiring": {
      const target = joinTarget(state.from, event, sheet);
      if (target === null) return calm([]);
      const { transaction, wireId } = joinEdits(sheet.document, sheet.scene, state.from, target, []);
      return calm([
        { act: "dispatch", transaction },
        { act: "select", ids: [wireId] },
      ]);
    }
    case "pulling": {
      const transaction = letGoGrip(state.grip, event, sheet);
      return calm(transaction === null ? [] : [{ act: "dispatch", transaction }]);
    }
  }
}

function tapped(press: Press, sheet: Sheet): Step<SelectState> {
  const id = selectableOf(press.target);
  const acts: Act[] = released({ phase: "pressed", press });
  if (id === null) return calm(press.isAdding ? acts : [...acts, { act: "select", ids: [] }]);
  if (press.isAdding) return calm([...acts, { act: "select", ids: toggled(sheet.selection, [id]) }]);
  acts.push({ act: "select", ids: [id] });
  const isControl = press.target.type === "part" && press.momentary === null && controlOf(id, sheet) !== null;
  return calm(isControl ? [...acts, { act: "flick", controlId: id }] : acts);
}

function dropped(
  state: Extract<SelectState, { phase: "moving" }>,
  event: PointerStep,
  sheet: Sheet,
): Step<SelectState> {
  const [dx, dy] = shiftOf(state.press, event);
  const insertion = insertionAfter(state.held, dx, dy, sheet);
  if (insertion !== null) {
    const { part } = insertion;
    const stand: Edit = { op: "set-part", id: part.id, change: { at: part.at ?? [0, 0], turn: part.turn ?? 0 } };
    const edits = [stand, ...insertEdits(insertion, sheet.document, sheet.scene, [])];
    return calm([{ act: "dispatch", transaction: { label: `Put ${part.id.toUpperCase()} into a wire`, edits } }]);
  }
  const transaction = moveHeld(state.held, sheet.document, sheet.scene, dx, dy);
  return calm(transaction === null ? [] : [{ act: "dispatch", transaction }]);
}

/** What a tap on a target selects: the part or wire, of a terminal its part. */
function selectableOf(target: BoardTarget): string | null {
  if (target.type === "sheet") return null;
  return target.type === "terminal" ? target.id.slice(0, target.id.indexOf(".")) : target.id;
}

function toggled(selection: ReadonlySet<string>, ids: readonly string[]): string[] {
  const next = new Set(selection);
  for (const id of ids) if (!next.delete(id)) next.add(id);
  return [...next];
}

function controlOf(id: string, sheet: Sheet) {
  const part = sheet.document.parts.find((each) => each.id === id);
  return part === undefined ? null : (kindOf(part.kind)?.control?.(settingsOf(part)) ?? null);
}
