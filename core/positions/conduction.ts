import { isClosed, restCombination, type Combination, type NetElement, type Netlist } from "../netlist/index.ts";
import { digitsOf, indexIn, type Group } from "./groups.ts";
import type { RelayTables } from "./relay-tables.ts";

/** Branches of one group that are closed contacts or sources that are on, in one of its combinations. */
export type Conduction = ReadonlySet<number>;

/** More combinations than this are not compared; every contact then counts as closed, which can only overstate a fault. */
const MOST_COMPARED = 2 ** 12;

/** Up to this many ways are all kept: closing a contact can lessen a fault too, where it joins another frame or a second short. */
const MOST_KEPT = 8;

/** Where the relays of one cone stand. */
export interface CoilTable {
  readonly cone: Group;
  readonly tables: RelayTables;
}

/**
 * The ways a group can stand that matter to a fault: all of a few, else those that no other way outdoes, as more closed contacts
 * as good as always add to a fault current. Relays stand as solved for each combination; unsettled ones are left out.
 */
export function faultConductions(netlist: Netlist, group: Group, solved: readonly CoilTable[]): Conduction[] {
  const moved = group.elements.filter(({ spec }) => spec.type === "contact" || spec.type === "source");
  const isSolved = group.coils.every((coil) => solved.some(({ tables }) => tables.pulledIn.has(coil.index)));
  if (!isSolved || group.size > MOST_COMPARED) return [new Set(moved.map(({ branch }) => branch))];
  const found = new Map<string, Conduction>();
  const combination = restCombination(netlist);
  for (let index = 0; index < group.size; index++) {
    digitsOf(netlist, group.controls, index).forEach((digit, at) => {
      combination[group.controls[at]!] = digit;
    });
    const places = solved.map(({ cone, tables }) => ({ tables, at: indexIn(netlist, cone, combination) }));
    if (places.some(({ tables, at }) => !tables.settled.has(at))) continue;
    const here = moved.filter((element) => conducts(netlist, element, combination, places)).map(({ branch }) => branch);
    found.set(here.join(" "), new Set(here));
  }
  const all = found.size > 0 ? [...found.values()] : [new Set<number>()];
  return all.length <= MOST_KEPT ? all : withoutOutdone(all);
}

function withoutOutdone(all: readonly Conduction[]): Conduction[] {
  const kept: Conduction[] = [];
  for (const way of all.toSorted((one, other) => other.size - one.size)) {
    if (!kept.some((other) => isWithin(way, other))) kept.push(way);
  }
  return kept;
}

interface Place {
  readonly tables: RelayTables;
  /** Number of the combination within that cone. */
  readonly at: number;
}

function conducts(netlist: Netlist, element: NetElement, combination: Combination, places: readonly Place[]): boolean {
  const { spec } = element;
  if (spec.type === "contact" && "coil" in spec.movedBy) {
    const place = places.find(({ tables }) => tables.pulledIn.has(element.coil));
    const pulledIn = place?.tables.pulledIn.get(element.coil)?.has(place.at) ?? false;
    return pulledIn === (spec.movedBy.closedWhen === "pulled-in");
  }
  return isClosed(netlist, element, combination);
}

function isWithin(inner: Conduction, outer: Conduction): boolean {
  return inner.size <= outer.size && [...inner].every((branch) => outer.has(branch));
}
