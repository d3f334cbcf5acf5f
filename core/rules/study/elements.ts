import type { NetElement, Netlist, NetPart } from "../../netlist/index.ts";
import type { Element } from "../../parts/index.ts";

export type ElementOf<T extends Element["type"]> = NetElement<Extract<Element, { type: T }>>;

const kept = new WeakMap<Netlist, Map<Element["type"], readonly NetElement[]>>();

/** All elements of one type, in the order of the drawing. */
export function elementsOf<T extends Element["type"]>(netlist: Netlist, type: T): readonly ElementOf<T>[] {
  const known = kept.get(netlist) ?? new Map<Element["type"], readonly NetElement[]>();
  kept.set(netlist, known);
  let found = known.get(type) as readonly ElementOf<T>[] | undefined;
  if (!found) {
    found = typed(netlist.elements, type);
    known.set(type, found);
  }
  return found;
}

export function elementsIn<T extends Element["type"]>(part: NetPart, type: T): readonly ElementOf<T>[] {
  return typed(part.elements, type);
}

function typed<T extends Element["type"]>(elements: readonly NetElement[], type: T): readonly ElementOf<T>[] {
  return elements.filter((element): element is ElementOf<T> => element.spec.type === type);
}

/** What the person wants to work: lamps, motors, appliances; not a plain resistance or what the vehicle already feeds. */
export function usesOf(netlist: Netlist): readonly ElementOf<"load">[] {
  return elementsOf(netlist, "load").filter(({ spec }) => spec.role === "use");
}

/** Everything current can be used up in: loads of all roles, coils, inputs of converters. */
export function consumersOf(
  netlist: Netlist,
): readonly (ElementOf<"load"> | ElementOf<"coil"> | ElementOf<"converter">)[] {
  return netlist.elements.filter(
    (element): element is ElementOf<"load"> | ElementOf<"coil"> | ElementOf<"converter"> =>
      element.spec.type === "load" || element.spec.type === "coil" || element.spec.type === "converter",
  );
}

export function partId(element: NetElement): string {
  return element.part.part.id;
}

/** "k1.87a" for an end of an element that is a terminal of its part. */
export function addressOf(element: NetElement, end: string): string {
  return `${partId(element)}.${end}`;
}

/** How reports name a fuse or breaker: its part, or the terminal of its way. */
export function deviceId(device: ElementOf<"protection">): string {
  return device.spec.terminal === "" ? partId(device) : addressOf(device, device.spec.terminal);
}

/** At least one wire is on it: it is part of the circuit and not just laid down. */
export function isWired(part: NetPart): boolean {
  return part.terminals.some(({ wires }) => wires.length > 0);
}
