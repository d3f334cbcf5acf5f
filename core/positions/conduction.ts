import { isClosed, restCombination, type Combination, type NetElement, type Netlist } from "../netlist/index.ts";
import { digitsOf, type Group } from "./groups.ts";
import type { RelayTables } from "./relay-tables.ts";

/** Branches of one group that are closed contacts or sources that are on, in one of its combinations. */
export type Conduction = ReadonlySet<number>;

/** More combinations than this are not compared; every contact then counts as closed, which can only overstate a fault. */
const MOST_COMPARED = 2 ** 12;

/** Up to this many ways are all kept: closing a contact can lessen a fault too, where it joins another frame or a second short. */
const MOST_KEPT = 8;

/** A cone with its relays solved; `null`: too many combinations to solve. */
export interface SolvedCone {
  readonly cone: Group;
  readonly tables: RelayTables | null;
}

/**
 * The ways a group can stand that matter to a fault, from those of its cones: what hangs from the same place feeds nothing into its
 * neighbours, so ways of several cones that agree on what they share are looked at together.
 */
export function faultConductions(netlist: Netlist, cones: readonly SolvedCone[]): Conduction[] {
  const together: Map<number, boolean>[] = [];
  for (const { cone, tables } of cones) {
    const moved = movedBranches(cone);
    for (const way of conductionsOf(netlist, cone, tables)) {
      const here = new Map(moved.map((branch) => [branch, way.has(branch)]));
      const fitting = together.find((other) =>
        [...here].every(([branch, closed]) => (other.get(branch) ?? closed) === closed),
      );
      if (!fitting) together.push(here);
      else for (const [branch, closed] of here) fitting.set(branch, closed);
    }
  }
  const ways = together.map((way) => new Set([...way].flatMap(([branch, closed]) => (closed ? [branch] : []))));
  return ways.length > 0 ? ways : [new Set<number>()];
}

function movedBranches({ elements }: Group): number[] {
  return elements.filter(({ spec }) => spec.type === "contact" || spec.type === "source").map(({ branch }) => branch);
}

/**
 * All ways of a cone where they are few, else those that no other way outdoes, as more closed contacts as good as always add to a
 * fault current. Relays stand as solved for each combination; unsettled ones are left out.
 */
function conductionsOf(netlist: Netlist, cone: Group, tables: RelayTables | null): Conduction[] {
  if (!tables || cone.size > MOST_COMPARED) return [new Set(movedBranches(cone))];
  const moved = cone.elements.filter(({ spec }) => spec.type === "contact" || spec.type === "source");
  const found = new Map<string, Conduction>();
  const combination = restCombination(netlist);
  for (let index = 0; index < cone.size; index++) {
    if (!tables.settled.has(index)) continue;
    digitsOf(netlist, cone.controls, index).forEach((digit, at) => {
      combination[cone.controls[at]!] = digit;
    });
    const here = moved
      .filter((element) => conducts(netlist, element, combination, tables, index))
      .map(({ branch }) => branch);
    found.set(here.join(" "), new Set(here));
  }
  const all = [...found.values()];
  return all.length <= MOST_KEPT ? all : withoutOutdone(all);
}

function withoutOutdone(all: readonly Conduction[]): Conduction[] {
  const kept: Conduction[] = [];
  for (const way of all.toSorted((one, other) => other.size - one.size)) {
    if (!kept.some((other) => isWithin(way, other))) kept.push(way);
  }
  return kept;
}

function conducts(
  netlist: Netlist,
  element: NetElement,
  combination: Combination,
  tables: RelayTables,
  index: number,
): boolean {
  const { spec } = element;
  if (spec.type === "contact" && "coil" in spec.movedBy) {
    const pulledIn = tables.pulledIn.get(element.coil)?.has(index) ?? false;
    return pulledIn === (spec.movedBy.closedWhen === "pulled-in");
  }
  return isClosed(netlist, element, combination);
}

function isWithin(inner: Conduction, outer: Conduction): boolean {
  return inner.size <= outer.size && [...inner].every((branch) => outer.has(branch));
}
