import type { Document, Part } from "../../core/document/index.ts";
import { kindOf, settingsOf, type Control, type PartKind, type Terminal } from "../../core/parts/index.ts";

/** What a part's kind says of it, worked out once per version of the part. */
export interface PartFacts {
  readonly kind: PartKind;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly terminals: readonly Terminal[];
  readonly control: Control | null;
}

const worked = new WeakMap<Part, PartFacts>();

/** Every part of an open drawing is of a known kind: the file reader refuses others. */
export function factsOf(part: Part): PartFacts {
  let facts = worked.get(part);
  if (facts === undefined) {
    const kind = kindOf(part.kind);
    if (kind === undefined) throw new RangeError(`factsOf: part "${part.id}" is of unknown kind "${part.kind}"; wanted one the Shelf holds`);
    const settings = settingsOf(part);
    facts = { kind, settings, terminals: kind.terminals(settings), control: kind.control?.(settings) ?? null };
    worked.set(part, facts);
  }
  return facts;
}

/** What people call a part: its id as printed and, if it has one, its label. "K1", "K1 work lamps". */
export function partName(part: Part): string {
  const name = part.id.toUpperCase();
  return part.label ? `${name} ${part.label}` : name;
}

/** What people call a place: "W3", "K1 relay", "terminal 87a of K1 relay". */
export function placeName(document: Document, place: string): string {
  const dot = place.indexOf(".");
  const part = document.parts.find((one) => one.id === (dot < 0 ? place : place.slice(0, dot)));
  if (part !== undefined && dot > 0) return `terminal ${place.slice(dot + 1)} of ${partName(part)}`;
  if (part !== undefined) return partName(part);
  const wire = document.wires.find((one) => one.id === place);
  return wire?.label ? `wire ${place.toUpperCase()} ${wire.label}` : `wire ${place.toUpperCase()}`;
}
