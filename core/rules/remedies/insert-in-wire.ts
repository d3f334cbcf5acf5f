import type { Document, Edit, GridPoint, Wire } from "../../document/index.ts";
import { splitAddress } from "../../document/index.ts";
import type { PartKind } from "../../parts/index.ts";
import type { NewIds } from "./new-ids.ts";

interface Insertion {
  readonly kind: PartKind;
  readonly props: Readonly<Record<string, unknown>>;
  readonly covers?: Readonly<Record<string, "covered">>;
  /** Terminals on the side of the wire's `from` and of its `to`. */
  readonly towardsFrom: string;
  readonly towardsTo: string;
  /** At which end of the wire the part sits, and how far from it at most. */
  readonly end: "from" | "to";
  readonly withinM: number;
  /** Size of the short piece between that end and the part, where it must be another. */
  readonly leadSize?: string;
}

/**
 * Cuts a wire and puts a part into it near one end. The wire keeps its id up to the part on its `from` side; the rest is a new
 * wire like it. The two lengths add up to the old one; an unknown length leaves the long piece unknown.
 */
export function insertInWire(document: Document, ids: NewIds, wire: Wire, insertion: Insertion): Edit[] {
  const { kind, props, covers, towardsFrom, towardsTo, end, withinM, leadSize } = insertion;
  const id = ids.next(kind.letter);
  const shortM = wire.metres === undefined ? withinM : Math.min(withinM, rounded(wire.metres / 2));
  const longM = wire.metres === undefined ? undefined : rounded(wire.metres - shortM);
  const [firstM, secondM] = end === "from" ? [shortM, longM] : [longM, shortM];
  const at = placeNear(document, wire, end);
  const { via: _path, metres: _length, ends, ...same } = wire;
  return [
    {
      op: "add-part",
      part: { id, kind: kind.kind, ...(at ? { at } : {}), props, ...(covers ? { covers } : {}) },
    },
    {
      op: "set-wire",
      id: wire.id,
      change: {
        to: `${id}.${towardsFrom}`,
        metres: firstM,
        via: undefined,
        ...(leadSize !== undefined && end === "from" ? { size: leadSize } : {}),
        ...(ends?.to ? { ends: ends.from ? { from: ends.from } : undefined } : {}),
      },
    },
    {
      op: "add-wire",
      wire: {
        ...same,
        id: ids.next("w"),
        from: `${id}.${towardsTo}`,
        ...(leadSize !== undefined && end === "to" ? { size: leadSize } : {}),
        ...(secondM === undefined ? {} : { metres: secondM }),
        ...(wire.label ? { label: freeLabel(document, wire.label) } : {}),
        ...(ends?.to ? { ends: { to: ends.to } } : {}),
      },
    },
  ];
}

/** The old number with the first letter nobody has: L3a. */
function freeLabel({ wires }: Document, label: string): string {
  const letter = [..."abcdefghijklmnopqrstuvwxyz"].find((each) => wires.every((wire) => wire.label !== label + each));
  return label + (letter ?? "");
}

/** To the millimetre, so that a sum of lengths reads as the old one. */
function rounded(metres: number): number {
  return Math.round(metres * 1000) / 1000;
}

/** A grid point a few steps from the part at this end towards the other one; none where neither is placed. */
function placeNear(document: Document, wire: Wire, end: "from" | "to"): GridPoint | null {
  const placeOf = (address: string) => document.parts.find(({ id }) => id === splitAddress(address)[0])?.at;
  const near = placeOf(wire[end]);
  const far = placeOf(wire[end === "from" ? "to" : "from"]);
  if (!near) return far ?? null;
  const goal = far ?? [near[0] + 4, near[1]];
  return [near[0] + Math.sign(goal[0] - near[0]) * 3, near[1] + (Math.sign(goal[1] - near[1]) || 1) * 3];
}
