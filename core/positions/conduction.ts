import { controlPositions, isClosed, restCombination, type NetElement, type Netlist } from "../netlist/index.ts";
import { digitsOf, type Group } from "./groups.ts";
import type { RelayTables } from "./relay-tables.ts";

/** Branches of one group that are closed contacts or sources that are on, in one of its combinations. */
export type Conduction = ReadonlySet<number>;

/** More combinations than this are not compared; every contact then counts as closed, which can only overstate a fault. */
const MOST_COMPARED = 2 ** 12;

/** Up to this many ways are all kept: closing a contact can lessen a fault too, where it joins another frame or a second short. */
const MOST_KEPT = 8;

/**
 * The ways a group can stand that matter to a fault: all of a few, else those that no other way outdoes, as more closed contacts
 * as good as always add to a fault current. Relays stand as solved for each combination; unsettled ones are left out.
 */
export function faultConductions(netlist: Netlist, group: Group, relays: RelayTables | null): Conduction[] {
  const moved = group.elements.filter(({ spec }) => spec.type === "contact" || spec.type === "source");
  if (!relays || group.size > MOST_COMPARED) return [new Set(moved.map(({ branch }) => branch))];
  const found = new Map<string, Conduction>();
  for (let index = 0; index < group.size; index++) {
    if (!relays.settled.has(index)) continue;
    const here = moved
      .filter((element) => conducts(netlist, group, relays, element, index))
      .map(({ branch }) => branch);
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

function conducts(netlist: Netlist, group: Group, relays: RelayTables, element: NetElement, index: number): boolean {
  const { spec } = element;
  if (spec.type === "contact" && "coil" in spec.movedBy) {
    const pulledIn = relays.pulledIn.get(element.coil)?.has(index) ?? false;
    return pulledIn === (spec.movedBy.closedWhen === "pulled-in");
  }
  if (!controlPositions(element)) return true;
  const combination = restCombination(netlist);
  digitsOf(netlist, group.controls, index).forEach((digit, at) => {
    combination[group.controls[at]!] = digit;
  });
  return isClosed(netlist, element, combination);
}

function isWithin(inner: Conduction, outer: Conduction): boolean {
  return inner.size <= outer.size && [...inner].every((branch) => outer.has(branch));
}
