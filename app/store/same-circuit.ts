import type { Document, Part, Wire } from "../../core/document/index.ts";

/**
 * Whether two drawings differ at most in where things stand on the sheet. What the analysis said of the one then holds for the
 * other, and nothing needs solving again.
 */
export function sameCircuit(a: Document, b: Document): boolean {
  return (
    a.system === b.system &&
    a.situations === b.situations &&
    a.parts.length === b.parts.length &&
    a.wires.length === b.wires.length &&
    a.parts.every((part, index) => samePart(part, b.parts[index]!)) &&
    a.wires.every((wire, index) => sameWire(wire, b.wires[index]!))
  );
}

const PART_PLACE: ReadonlySet<string> = new Set(["at", "turn", "flip"]);
const WIRE_PLACE: ReadonlySet<string> = new Set(["via"]);

function samePart(a: Part, b: Part): boolean {
  return a === b || sameApartFrom(PART_PLACE, a, b);
}

function sameWire(a: Wire, b: Wire): boolean {
  return a === b || sameApartFrom(WIRE_PLACE, a, b);
}

function sameApartFrom<T extends object>(place: ReadonlySet<string>, a: T, b: T): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]) as Set<string & keyof T>;
  return [...keys].every((key) => place.has(key) || a[key] === b[key]);
}
