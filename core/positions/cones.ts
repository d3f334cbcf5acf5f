import { NodeSets, type NetElement, type Netlist } from "../netlist/index.ts";
import { nodesOf } from "./circuits.ts";
import { groupFrom, type Group } from "./groups.ts";
import type { Rails } from "./rails.ts";

/** A piece of a group with everything that can influence it, and nothing else. */
export interface Cone extends Group {
  /** Classes this cone answers for; those it only leans on are answered for by another. */
  readonly owned: ReadonlySet<number>;
}

/** Groups with no more combinations than this are not worth taking apart. */
const SMALL = 32;

/**
 * Takes a group apart where one piece hangs from another. Ten switched lamps behind one relay lean on that relay but not on one
 * another: ten cones of two controls each instead of one group of eleven. Every class of the group is owned by one cone.
 */
export function conesOf(netlist: Netlist, rails: Rails, group: Group): Cone[] {
  const whole = () => new Set(group.elements.flatMap((element) => classesOf(rails, element)));
  if (group.size <= SMALL) return [{ ...group, owned: whole() }];
  const units: Unit[] = [];
  for (const circuit of circuitsOf(rails, group.elements, null)) takeApart(rails, circuit, null, units);
  const unitOf = new Map(units.flatMap((unit) => [...unit.elements].map(({ index }): [number, Unit] => [index, unit])));
  return alikeClosures(units, unitOf).map(({ leansOn, units: alike }) => {
    const elements = group.elements.filter(({ index }) => leansOn.has(unitOf.get(index)!));
    return { ...groupFrom(netlist, elements), owned: new Set(alike.flatMap((unit) => [...ownedBy(rails, unit)])) };
  });
}

/** Units that lean on the very same ones, as in a ring of relays, are looked at together. */
function alikeClosures(
  units: readonly Unit[],
  unitOf: ReadonlyMap<number, Unit>,
): { leansOn: ReadonlySet<Unit>; units: Unit[] }[] {
  const numbers = new Map(units.map((unit, at) => [unit, at]));
  const found = new Map<string, { leansOn: ReadonlySet<Unit>; units: Unit[] }>();
  for (const unit of units) {
    const leansOn = closure(unit, unitOf);
    const key = Uint32Array.from(leansOn, (one) => numbers.get(one)!)
      .sort()
      .join(" ");
    const alike = found.get(key);
    if (alike) alike.units.push(unit);
    else found.set(key, { leansOn, units: [unit] });
  }
  return [...found.values()];
}

/** A circuit, or a piece that hangs from the class `from` of `parent`. */
interface Unit {
  readonly elements: Set<NetElement>;
  readonly parent: Unit | null;
  readonly from: number | null;
}

/** Splits hanging pieces off a circuit, and again off those; what remains is their parent. */
function takeApart(
  rails: Rails,
  elements: readonly NetElement[],
  hanger: Pick<Unit, "parent" | "from"> | null,
  units: Unit[],
): void {
  const unit: Unit = { elements: new Set(elements), parent: hanger?.parent ?? null, from: hanger?.from ?? null };
  units.push(unit);
  const classes = new Set(elements.flatMap((element) => classesOf(rails, element)));
  for (const one of classes) {
    if (one === unit.from) continue;
    for (const piece of circuitsOf(rails, [...unit.elements], one)) {
      // The side that leads back to the parent drives the rest.
      const isFeeding = piece.some((element) => classesOf(rails, element).includes(unit.from ?? -1));
      if (isFeeding || piece.length === unit.elements.size || !hangs(rails, piece, one)) continue;
      for (const element of piece) unit.elements.delete(element);
      takeApart(rails, piece, { parent: unit, from: one }, units);
    }
  }
}

/**
 * Whether nothing in a piece can drive the class it hangs from, or tie it to a negative: no source and no way to a live rail in it,
 * and to other rails only through loads.
 */
function hangs({ classOf, plus, isRail }: Rails, piece: readonly NetElement[], from: number): boolean {
  // Without a contact of its own a piece adds no combinations: it may as well stay.
  if (!piece.some(({ spec }) => spec.type === "contact")) return false;
  return piece.every((element) => {
    const { spec } = element;
    if (spec.type === "source" || spec.type === "converter") return false;
    const classes = nodesOf(element).map((node) => classOf[node]!);
    if (classes.some((one) => plus[one] === 1)) return false;
    const isLoad =
      spec.type === "load" || spec.type === "coil" || (spec.type === "diode" && spec.suppresses !== undefined);
    return isLoad || classes.every((one) => isRail[one] === 0 || one === from);
  });
}

/** Elements put together that share a class, rails and `apart` excepted. */
function circuitsOf(rails: Rails, elements: readonly NetElement[], apart: number | null): NetElement[][] {
  const sets = new NodeSets(elements.length);
  const first = new Map<number, number>();
  elements.forEach((element, index) => {
    for (const one of classesOf(rails, element)) {
      if (one === apart) continue;
      const other = first.get(one);
      if (other === undefined) first.set(one, index);
      else sets.join(other, index);
    }
  });
  const pieces = new Map<number, NetElement[]>();
  elements.forEach((element, index) => {
    const piece = pieces.get(sets.find(index));
    if (piece) piece.push(element);
    else pieces.set(sets.find(index), [element]);
  });
  return [...pieces.values()];
}

/** Classes of an element that are no rails. */
function classesOf({ classOf, isRail }: Rails, element: NetElement): number[] {
  return nodesOf(element)
    .map((node) => classOf[node]!)
    .filter((one) => isRail[one] === 0);
}

function ownedBy(rails: Rails, { elements, from }: Unit): Set<number> {
  const owned = new Set([...elements].flatMap((element) => classesOf(rails, element)));
  if (from !== null) owned.delete(from);
  return owned;
}

/** The unit, what it hangs from, and wherever the coil of one of its contacts sits, with all those lean on. */
function closure(unit: Unit, unitOf: ReadonlyMap<number, Unit>): Set<Unit> {
  const found = new Set([unit]);
  for (const one of found) {
    if (one.parent) found.add(one.parent);
    for (const { coil } of one.elements) {
      const mover = coil < 0 ? undefined : unitOf.get(coil);
      if (mover) found.add(mover);
    }
  }
  return found;
}
