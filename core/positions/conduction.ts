import { controlPositions, isClosed, restCombination, type NetElement, type Netlist } from "../netlist/index.ts";
import { digitsOf, type Group } from "./groups.ts";
import type { RelayTables } from "./relay-tables.ts";

/** Branches of one group that are closed contacts or sources that are on, in one of its combinations. */
export type Conduction = ReadonlySet<number>;

/** More combinations than this are not compared; every contact then counts as closed, which can only overstate a fault. */
const MOST_COMPARED = 2 ** 12;

/**
 * The ways a group can stand that no other way of it outdoes: more closed contacts only ever add to a fault current, so the rest
 * need no look. Relays stand as solved for each combination; unsettled ones are left out.
 */
export function fullestConductions(netlist: Netlist, group: Group, relays: RelayTables | null): Conduction[] {
  const moved = group.elements.filter(({ spec }) => spec.type === "contact" || spec.type === "source");
  if (!relays || group.size > MOST_COMPARED) return [new Set(moved.map(({ branch }) => branch))];
  const found: Conduction[] = [];
  for (let index = 0; index < group.size; index++) {
    if (!relays.settled.has(index)) continue;
    const here = new Set(
      moved.filter((element) => conducts(netlist, group, relays, element, index)).map(({ branch }) => branch),
    );
    if (found.some((other) => isWithin(here, other))) continue;
    const kept = found.filter((other) => !isWithin(other, here));
    found.length = 0;
    found.push(...kept, here);
  }
  return found;
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
