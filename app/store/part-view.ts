import type { Document, Part } from "../../core/document/index.ts";
import { kindOf, settingsOf, terminalsOf, type Control, type PartKind, type Terminal } from "../../core/parts/index.ts";

/** What panels show of a part, worked out once per version of the part. */
export interface PartView {
  readonly kind: PartKind;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly terminals: readonly Terminal[];
  readonly control: Control | null;
}

const worked = new WeakMap<Part, PartView>();

/** Throws RangeError for a kind nobody knows; the file reader lets none in. */
export function viewOf(part: Part): PartView {
  let view = worked.get(part);
  if (view === undefined) {
    const kind = kindOf(part.kind)!;
    const settings = settingsOf(part);
    view = { kind, settings, terminals: terminalsOf(part), control: kind.control?.(settings) ?? null };
    worked.set(part, view);
  }
  return view;
}

/** What people call a part: its id as printed and, if it has one, its label. "K1", "K1 work lamps". */
export function partName(part: Part): string {
  const name = part.id.toUpperCase();
  if (!part.label) return name;
  return part.label.toUpperCase().startsWith(name) ? part.label : `${name} ${part.label}`;
}

/** What people call a place: "wire W3", "K1 relay", "terminal 87a of K1 relay". */
export function placeName(document: Document, place: string): string {
  const dot = place.indexOf(".");
  const part = byId(document.parts).get(dot < 0 ? place : place.slice(0, dot));
  if (part !== undefined && dot > 0) return `terminal ${place.slice(dot + 1)} of ${partName(part)}`;
  if (part !== undefined) return partName(part);
  if (document.notes?.some((note) => note.id === place)) return `note ${place.toUpperCase()}`;
  const wire = byId(document.wires).get(place);
  return wire?.label ? `wire ${place.toUpperCase()} ${wire.label}` : `wire ${place.toUpperCase()}`;
}

const indexed = new WeakMap<readonly object[], ReadonlyMap<string, unknown>>();

/** Things of a document by id, worked out once per version of the list: long lists name every one of their things. */
function byId<T extends { readonly id: string }>(things: readonly T[]): ReadonlyMap<string, T> {
  let index = indexed.get(things) as ReadonlyMap<string, T> | undefined;
  if (index === undefined) {
    index = new Map(things.map((thing) => [thing.id, thing]));
    indexed.set(things, index);
  }
  return index;
}
