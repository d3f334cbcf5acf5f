import type { NetElement, Netlist, NetWire } from "../netlist/index.ts";
import { railsOf } from "./rails.ts";

/** One step a way can take between two nodes. */
export interface Step {
  readonly to: number;
  /** Passed on the way; `null` for everything else. */
  readonly device: NetElement | null;
  readonly wire: NetWire | null;
  readonly needs: Position | null;
}

/** A contact's demand on what moves it: on one way each control and each relay stands in one position only. */
export interface Position {
  /** Element number of the coil, or -1 - control's part number. */
  readonly mover: number;
  /** Positions in which the contact is closed. */
  readonly positions: readonly string[];
}

/**
 * The net as a fault or a feed could travel it, whatever the controls and coils do: over wires, joints, protection that is fitted
 * (a tripped breaker may close again), contacts in either position and diodes forward; never through a load, coil or converter.
 */
export interface WayGraph {
  readonly steps: readonly (readonly Step[])[];
  /** 1 for nodes tied to a source's negative without a contact: ways end there. */
  readonly ends: Uint8Array;
  /** 1 for nodes that a load, coil or converter is fed at (or comes back to). */
  readonly served: Uint8Array;
}

export function wayGraph(netlist: Netlist): WayGraph {
  const contactsOf = countContacts(netlist);
  const steps = Array.from({ length: netlist.nodeCount }, (): Step[] => []);
  const tie = (a: number, b: number, step: Omit<Step, "to">) => {
    steps[a]!.push({ ...step, to: b });
    steps[b]!.push({ ...step, to: a });
  };
  for (const wire of netlist.wires) tie(wire.from.node, wire.to.node, { device: null, wire, needs: null });
  for (const element of netlist.elements) {
    const { spec, a, b } = element;
    if (spec.type === "link") tie(a, b, { device: null, wire: null, needs: null });
    if (spec.type === "protection" && (spec.closed || spec.recloses))
      tie(a, b, { device: element, wire: null, needs: null });
    if (spec.type === "contact")
      tie(a, b, {
        device: null,
        wire: null,
        needs: contactsOf.get(moverOf(element))! > 1 ? positionOf(element) : null,
      });
    if (spec.type === "diode" && spec.suppresses === undefined) {
      steps[a]!.push({ to: b, device: null, wire: null, needs: null });
    }
  }
  const served = new Uint8Array(netlist.nodeCount);
  for (const { spec, a, b } of netlist.elements) {
    if (spec.type === "load" || spec.type === "coil" || spec.type === "converter") served[a] = served[b] = 1;
  }
  const { classOf, minus } = railsOf(netlist);
  return { steps, ends: Uint8Array.from(classOf, (one) => minus[one]!), served };
}

/** How many contacts each mover has: one alone can never contradict itself. */
function countContacts(netlist: Netlist): Map<number, number> {
  const counts = new Map<number, number>();
  for (const element of netlist.elements) {
    if (element.spec.type === "contact") counts.set(moverOf(element), (counts.get(moverOf(element)) ?? 0) + 1);
  }
  return counts;
}

function moverOf(element: NetElement): number {
  return element.coil >= 0 ? element.coil : -1 - element.part.index;
}

function positionOf(element: NetElement): Position | null {
  const { spec } = element;
  if (spec.type !== "contact") return null;
  return {
    mover: moverOf(element),
    positions: "positions" in spec.movedBy ? spec.movedBy.positions : [spec.movedBy.closedWhen],
  };
}

/** The positions a way has used so far: what each mover may still stand in. */
export type Stand = ReadonlyMap<number, readonly string[]>;

/** The stand after passing a contact, or null when its mover would have to be in two positions at once. */
export function standAfter(stand: Stand, needs: Position | null): Stand | null {
  if (!needs) return stand;
  const before = stand.get(needs.mover);
  const left = before ? before.filter((position) => needs.positions.includes(position)) : needs.positions;
  if (left.length === 0) return null;
  if (before && left.length === before.length) return stand;
  return new Map([...stand, [needs.mover, left]]);
}

/**
 * Where a search has been, with which stands. A stand that leaves every mover at least the choice of one seen before can reach
 * nothing new: whatever goes on from here went on from there.
 */
export class SeenStands {
  private readonly seen = new Map<number, Stand[]>();

  /** False when this node was seen with a stand at least as free; notes it otherwise. */
  add(node: number, stand: Stand): boolean {
    const stands = this.seen.get(node) ?? [];
    this.seen.set(node, stands);
    if (stands.some((before) => isAtLeastAsFree(before, stand))) return false;
    stands.push(stand);
    return true;
  }
}

function isAtLeastAsFree(before: Stand, stand: Stand): boolean {
  return [...before].every(([mover, left]) => stand.get(mover)?.every((position) => left.includes(position)) ?? false);
}
