import { controlNumber, controlPositions, type NetElement, type Netlist } from "../netlist/index.ts";
import { joinCircuits, movingElements } from "./circuits.ts";
import type { Rails } from "./rails.ts";

/**
 * Controls and relays that can influence one another, with the elements between them. Every combination of a group is looked at
 * with the other groups at rest, which loses nothing: groups meet only in rails.
 */
export interface Group {
  /** Control numbers; the engine is among them when a relay's volts could hang on it. */
  readonly controls: readonly number[];
  /** Elements that are not fixed, of all circuits of the group. */
  readonly elements: readonly NetElement[];
  /** Coils, in element order. */
  readonly coils: readonly NetElement[];
  /** Number of combinations of `controls`. */
  readonly size: number;
}

const ENGINE = 0;

export function groupsOf(netlist: Netlist, rails: Rails): Group[] {
  const moving = movingElements(netlist);
  const circuits = joinCircuits(netlist, rails, moving);
  const byCircuit = new Map<number, NetElement[]>();
  moving.forEach((element, index) => {
    const circuit = circuits.find(index);
    const list = byCircuit.get(circuit);
    if (list) list.push(element);
    else byCircuit.set(circuit, [element]);
  });
  return [...byCircuit.values()].map((elements) => groupFrom(netlist, elements));
}

/** A group of these elements: its controls, coils and number of combinations. */
export function groupFrom(netlist: Netlist, elements: readonly NetElement[]): Group {
  const coils = elements.filter(({ spec }) => spec.type === "coil");
  const numbers = new Set<number>(coils.length > 0 ? [ENGINE] : []);
  for (const element of elements) if (controlPositions(element)) numbers.add(controlNumber(netlist, element));
  const controls = [...numbers].sort((one, other) => one - other);
  const size = controls.reduce((product, control) => product * netlist.controls[control]!.positions.length, 1);
  return { controls, elements, coils, size };
}

/** Position index of each of the group's controls in combination number `index`; 0 is everything at rest. */
export function digitsOf(netlist: Netlist, controls: readonly number[], index: number): number[] {
  return controls.map((control) => {
    const count = netlist.controls[control]!.positions.length;
    const digit = index % count;
    index = Math.floor(index / count);
    return digit;
  });
}
