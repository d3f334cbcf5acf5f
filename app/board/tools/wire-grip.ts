import type { Transaction, Wire } from "../../../core/document/index.ts";
import { nearestOnRoute, type Point, routeCorridor, routeWire } from "../../../core/geometry/index.ts";
import { type BoardOverlay, NO_OVERLAY } from "../board-overlay.ts";
import { endHandles } from "../end-handles.ts";
import type { PointerStep } from "./board-event.ts";
import type { Joinable } from "./join.ts";
import { NEAR_REACH } from "./picking.ts";
import { reshaped, viaAfterMovedCorner, viaAfterMovedRun } from "./reshape-wire.ts";
import type { Sheet } from "./tool.ts";
import { draftRoute, joinableAt } from "./wire-draft.ts";

const NOTHING: ReadonlySet<string> = new Set();

/** What a drag has hold of on a wire: an end, a corner, or a run between two corners. */
export type Grip = Hold & {
  readonly wire: Wire;
  /** The wire's id alone: what the resting drawing is shown without. */
  readonly hidden: ReadonlySet<string>;
};

type Hold =
  | { readonly on: "end"; readonly end: "from" | "to" }
  | { readonly on: "corner"; readonly corner: number; readonly route: readonly Point[] }
  | { readonly on: "run"; readonly segment: number; readonly route: readonly Point[] };

type EndGrip = Extract<Grip, { on: "end" }>;

/** What of the selected wire lies under a pointer; `null` when it is not the only thing selected or lies elsewhere. */
export function gripOf(at: Point, sheet: Sheet, isTouch: boolean): Grip | null {
  const [id] = sheet.selection;
  return sheet.selection.size === 1 && id !== undefined ? gripOn(id, at, sheet, isTouch) : null;
}

/** What of a wire lies under a pointer. */
export function gripOn(id: string, at: Point, sheet: Sheet, isTouch: boolean): Grip | null {
  const wire = sheet.document.wires.find((each) => each.id === id);
  const route = sheet.scene.wires.get(id)?.picture.route;
  if (wire === undefined || route === undefined || route.length < 2) return null;
  const reach = (isTouch ? NEAR_REACH.touch.wirePx : NEAR_REACH.mouse.wirePx + 1) / sheet.view.scale;
  const hold = holdOf(route, at, reach);
  return hold === null ? null : { ...hold, wire, hidden: new Set([id]) };
}

function holdOf(route: readonly Point[], at: Point, reach: number): Hold | null {
  const away = (point: Point) => Math.hypot(point[0] - at[0], point[1] - at[1]);
  const isNear = (point: Point) => away(point) <= reach;
  const handles = endHandles(route);
  for (const [index, end] of (["from", "to"] as const).entries()) {
    const terminal = index === 0 ? route[0]! : route.at(-1)!;
    const handle = handles[index]!;
    // The terminal itself starts the next wire: only what is nearer to the handle takes hold of this one's end.
    if (isNear(terminal) && away(terminal) < away(handle)) return null;
    if (isNear(handle)) return { on: "end", end };
  }
  const corner = route.slice(1, -1).findIndex(isNear) + 1;
  if (corner > 0) return { on: "corner", corner, route };
  const hit = nearestOnRoute(at, route);
  return hit === null || hit.distance > reach ? null : { on: "run", segment: hit.segment, route };
}

/** How the wire looks while its grip is at the pointer. */
export function pulledGrip(grip: Grip, event: PointerStep, sheet: Sheet): BoardOverlay {
  const { wire } = grip;
  const lift = { hidden: grip.hidden, moving: NOTHING, dx: 0, dy: 0 };
  if (grip.on === "end") {
    const target = newEnd(grip, event, sheet);
    const draft = draftRoute(sheet.scene, otherEnd(grip), [], target ?? event.at, wire.id);
    return { ...NO_OVERLAY, lift: { ...lift, stretched: [] }, draft, attract: target?.at ?? null };
  }
  const route = routeBy(wire, viaOf(grip, event.at), sheet);
  return { ...NO_OVERLAY, lift: { ...lift, stretched: [{ id: wire.id, route }] } };
}

/** What letting go there does; `null` for nothing. */
export function letGoGrip(grip: Grip, event: PointerStep, sheet: Sheet): Transaction | null {
  const { wire } = grip;
  if (grip.on !== "end") return reshaped(wire, viaOf(grip, event.at));
  const target = newEnd(grip, event, sheet);
  if (target === null || target.on !== "terminal" || target.address === wire[grip.end]) return null;
  const change = { [grip.end]: target.address, via: undefined };
  return {
    label: `Take wire ${wire.id.toUpperCase()} to another terminal`,
    edits: [{ op: "set-wire", id: wire.id, change }],
  };
}

function viaOf(grip: Exclude<Grip, EndGrip>, at: Point) {
  return grip.on === "run"
    ? viaAfterMovedRun(grip.route, grip.segment, at)
    : viaAfterMovedCorner(grip.route, grip.corner, at);
}

function routeBy(wire: Wire, via: readonly Point[], sheet: Sheet): Point[] {
  const terminal = (address: string) =>
    sheet.scene.parts
      .get(address.slice(0, address.indexOf(".")))
      ?.picture.terminals.find((each) => each.address === address);
  const [from, to] = [terminal(wire.from), terminal(wire.to)];
  if (from === undefined || to === undefined) return [];
  const near = sheet.scene.parts.touching(routeCorridor([from.at, ...via, to.at]));
  return routeWire(
    from,
    to,
    via,
    near.flatMap(({ picture }) => picture.room),
  );
}

function otherEnd({ wire, end }: EndGrip): Joinable {
  return { on: "terminal", address: end === "from" ? wire.to : wire.from, at: [0, 0] };
}

/** The terminal the end would go to; not the one its other end is on. */
function newEnd({ wire, end }: EndGrip, event: PointerStep, sheet: Sheet): Joinable | null {
  const found = joinableAt(
    sheet.scene,
    event.at,
    sheet.view.scale,
    event.isTouch,
    end === "from" ? wire.to : wire.from,
  );
  return found?.on === "terminal" ? found : null;
}
