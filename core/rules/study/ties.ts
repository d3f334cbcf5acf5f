import type { Solution } from "../../circuit/index.ts";
import { isClosed, NodeSets, type Combination, type NetElement, type Netlist } from "../../netlist/index.ts";

/** What stands on what in one solved combination, by closed conductors alone: wires, closed contacts, fitted fuses, forward diodes. */
export interface Ties {
  /** One number for all metal that is joined without a diode between. */
  classOf(node: number): number;
  /** Leads to a source's positive. */
  onPlus(node: number): boolean;
  /** Leads to a source's negative. */
  onMinus(node: number): boolean;
}

const kept = new WeakMap<Solution, Ties>();

/** Ties of a combination as solved. Relay contacts stand as the solution says; without a settled one they count as released. */
export function tiesIn(netlist: Netlist, combination: Combination, solution: Solution): Ties {
  let ties = kept.get(solution);
  if (!ties) {
    ties = tie(netlist, combination, solution, {});
    kept.set(solution, ties);
  }
  return ties;
}

/** What is taken out: one element, some wires by number. */
interface Without {
  readonly element?: NetElement;
  readonly wires?: ReadonlySet<number>;
}

/** The same with something taken out. */
export function tiesWithout(netlist: Netlist, combination: Combination, solution: Solution, without: Without): Ties {
  return tie(netlist, combination, solution, without);
}

/** Current can be pushed through it from a source, straight: one end leads to a positive, the other to a negative. */
export function isEnergised({ a, b }: NetElement, ties: Ties): boolean {
  if (ties.classOf(a) === ties.classOf(b)) return false;
  return (ties.onPlus(a) && ties.onMinus(b)) || (ties.onPlus(b) && ties.onMinus(a));
}

function tie(netlist: Netlist, combination: Combination, solution: Solution, { element: out, wires }: Without): Ties {
  const sets = new NodeSets(netlist.nodeCount);
  for (const wire of netlist.wires) if (!wires?.has(wire.index)) sets.join(wire.from.node, wire.to.node);
  for (const element of netlist.elements) {
    if (element !== out && conducts(netlist, combination, solution, element)) sets.join(element.a, element.b);
  }
  const plus = new Uint8Array(netlist.nodeCount);
  const minus = new Uint8Array(netlist.nodeCount);
  for (const element of netlist.elements) {
    if (element === out) continue;
    const { spec, a, b, outA, outB, branch } = element;
    if (spec.type === "source") {
      if (isClosed(netlist, element, combination)) plus[sets.find(a)] = 1;
      minus[sets.find(b)] = 1;
    } else if (spec.type === "converter") {
      if (solution.active[branch] === 1) plus[sets.find(outA)] = 1;
      minus[sets.find(outB)] = 1;
    }
  }
  spreadThroughDiodes(netlist, sets, out, plus, minus);
  return {
    classOf: (node) => sets.find(node),
    onPlus: (node) => plus[sets.find(node)] === 1,
    onMinus: (node) => minus[sets.find(node)] === 1,
  };
}

/** Whether an element joins its two ends as a plain conductor in this combination; a diode does not count. */
export function conducts(netlist: Netlist, combination: Combination, solution: Solution, element: NetElement): boolean {
  const { spec, branch, coil } = element;
  if (spec.type === "link") return true;
  if (spec.type === "protection") return spec.closed;
  if (spec.type !== "contact") return false;
  if (coil < 0) return isClosed(netlist, element, combination);
  if (solution.status === "ok") return solution.active[branch] === 1;
  return "coil" in spec.movedBy && spec.movedBy.closedWhen === "released";
}

/** A positive is handed on from anode to cathode, a negative from cathode to anode. A coil's own diode is part of its coil. */
function spreadThroughDiodes(
  netlist: Netlist,
  sets: NodeSets,
  out: NetElement | undefined,
  plus: Uint8Array,
  minus: Uint8Array,
): void {
  const diodes = netlist.elements.filter(
    (element) => element !== out && element.spec.type === "diode" && element.spec.suppresses === undefined,
  );
  for (let more = diodes.length > 0; more;) {
    more = false;
    for (const { a, b } of diodes) {
      const from = sets.find(a);
      const to = sets.find(b);
      if (plus[from] === 1 && plus[to] === 0) more = (plus[to] = 1) === 1;
      if (minus[to] === 1 && minus[from] === 0) more = (minus[from] = 1) === 1;
    }
  }
}
