import type { Document, Edit, GridPoint, Part, Transaction } from "../../../core/document/index.ts";
import type { Point } from "../../../core/geometry/index.ts";
import { type PartKind, partKinds, settingsOf } from "../../../core/parts/index.ts";
import { nextId } from "../../store/ids.ts";
import type { Scene } from "../paint/scene.ts";
import { divideWire } from "./divide-wire.ts";

/** Where a new wire may end: on a terminal, or on another wire, where a splice is put in. */
export type Joinable =
  | { readonly on: "terminal"; readonly address: string; readonly at: Point }
  | { readonly on: "wire"; readonly id: string; readonly at: Point };

/** Whether a wire may run between the two: not from a terminal to itself, nor from a wire to itself. */
export function canJoin(a: Joinable, b: Joinable): boolean {
  if (a.on === "terminal") return b.on === "wire" || a.address !== b.address;
  return b.on === "terminal" || a.id !== b.id;
}

/** A new wire as one step to undo; each end that lies on another wire gets a splice, and that wire becomes two. */
export function joinEdits(
  document: Document,
  scene: Scene,
  from: Joinable,
  to: Joinable,
  via: readonly GridPoint[],
): { readonly transaction: Transaction; readonly wireId: string } {
  const taken: string[] = [];
  const newId = (letter: string) => {
    const id = nextId(document, letter, taken);
    taken.push(id);
    return id;
  };
  const edits: Edit[] = [];
  const addressOf = (end: Joinable): string => {
    if (end.on === "terminal") return end.address;
    const spliced = spliceInto(document, scene, end.id, end.at, newId);
    edits.push(...spliced.edits);
    return spliced.address;
  };
  const ends = { from: addressOf(from), to: addressOf(to) };
  const wireId = newId("w");
  edits.push({ op: "add-wire", wire: { id: wireId, ...ends, ...(via.length > 0 && { via }) } });
  return { transaction: { label: `Draw wire ${wireId.toUpperCase()}`, edits }, wireId };
}

/** The edits that put a splice into a wire at the grid point of its run nearest to `at`, and the splice's terminal. */
function spliceInto(
  document: Document,
  scene: Scene,
  wireId: string,
  at: Point,
  newId: (letter: string) => string,
): { readonly edits: Edit[]; readonly address: string } {
  const wire = document.wires.find(({ id }) => id === wireId);
  const route = scene.wires.get(wireId)?.picture.route;
  if (wire === undefined || route === undefined)
    throw new RangeError(`spliceInto: there is no wire "${wireId}" on the sheet`);
  const spot: GridPoint = [Math.round(at[0]), Math.round(at[1])];
  const part: Part = { id: newId(joint.kind.letter), kind: joint.kind.kind, at: spot };
  const address = `${part.id}.${joint.terminal}`;
  const cut = { at: spot, firstTo: address, secondFrom: address };
  return { edits: [{ op: "add-part", part }, ...divideWire(wire, route, cut, [newId("w"), newId("w")])], address };
}

const joint = jointKind();

/** The kind that stands for wires joined to one another: the one whose only terminal a wire may leave on any side. */
function jointKind(): { readonly kind: PartKind; readonly terminal: string } {
  for (const kind of partKinds) {
    const [terminal, ...others] = kind.terminals(settingsOf({ id: "new", kind: kind.kind }));
    if (terminal?.anyExit === true && others.length === 0) return { kind, terminal: terminal.name };
  }
  throw new RangeError("jointKind: no registered kind has a single terminal with any exit; register the splice");
}
