import type { Solution } from "../../circuit/index.ts";
import { isClosed, type Combination, type NetElement, type Netlist } from "../../netlist/index.ts";
import { consumersOf, elementsOf } from "./elements.ts";
import { pathsOf } from "./spread.ts";
import { conducts } from "./ties.ts";

const kept = new WeakMap<Netlist, readonly (readonly number[])[]>();

/** For each node, the far ends of the loads and coils that start there. */
function beyondLoads(netlist: Netlist): readonly (readonly number[])[] {
  let beyond = kept.get(netlist);
  if (!beyond) {
    const ends = Array.from({ length: netlist.nodeCount }, (): number[] => []);
    for (const { spec, a, b } of consumersOf(netlist)) {
      if (spec.type === "converter") continue;
      ends[a]!.push(b);
      ends[b]!.push(a);
    }
    kept.set(netlist, (beyond = ends));
  }
  return beyond;
}

/** Metal joined without a diode between, and which ends of sources it holds or a diode lets it lead to. */
interface Metal {
  readonly nodes: ReadonlySet<number>;
  onPlus: boolean;
  onMinus: boolean;
}

/**
 * Tells of a node whether it is hot with some wires away: by a direct way, or through loads and coils where no return holds it down.
 * Looks no farther from the node than it has to.
 */
export function isHotWithout(
  netlist: Netlist,
  combination: Combination,
  solution: Solution,
  wires: ReadonlySet<number>,
): (node: number) => boolean {
  const look = new Look(netlist, combination, solution, wires);
  return (node) => look.isHot(node);
}

class Look {
  private readonly metals = new Map<number, Metal>();
  private readonly plus = new Set<number>();
  private readonly minus = new Set<number>();
  private readonly diodes: readonly NetElement[];
  private readonly netlist: Netlist;
  private readonly combination: Combination;
  private readonly solution: Solution;
  private readonly wires: ReadonlySet<number>;

  constructor(netlist: Netlist, combination: Combination, solution: Solution, wires: ReadonlySet<number>) {
    this.netlist = netlist;
    this.combination = combination;
    this.solution = solution;
    this.wires = wires;
    this.diodes = elementsOf(netlist, "diode").filter(({ spec }) => spec.suppresses === undefined);
    for (const source of elementsOf(netlist, "source")) {
      if (isClosed(netlist, source, combination)) this.plus.add(source.a);
      this.minus.add(source.b);
    }
    for (const { branch, outA, outB } of elementsOf(netlist, "converter")) {
      if (solution.active[branch] === 1) this.plus.add(outA);
      this.minus.add(outB);
    }
  }

  isHot(node: number): boolean {
    const found = new Set([this.metalOf(node)]);
    for (const metal of found) {
      if (metal.onPlus) return true;
      if (metal.onMinus) continue;
      for (const here of metal.nodes) for (const far of beyondLoads(this.netlist)[here]!) found.add(this.metalOf(far));
    }
    return false;
  }

  private metalOf(node: number): Metal {
    const known = this.metals.get(node);
    if (known) return known;
    const metal: Metal = { nodes: this.joinedTo(node), onPlus: false, onMinus: false };
    const { nodes } = metal;
    for (const at of nodes) {
      if (this.plus.has(at)) metal.onPlus = true;
      if (this.minus.has(at)) metal.onMinus = true;
    }
    for (const at of nodes) this.metals.set(at, metal);
    for (const { a, b } of this.diodes) {
      if (nodes.has(b) && !metal.onPlus && this.metalOf(a).onPlus) metal.onPlus = true;
      if (nodes.has(a) && !metal.onMinus && this.metalOf(b).onMinus) metal.onMinus = true;
    }
    return metal;
  }

  /** Metal joined to a node, up to where a source's end is met: that settles how it stands, and grounds are large. */
  private joinedTo(node: number): ReadonlySet<number> {
    const { steps, fixed, plus } = pathsOf(this.netlist);
    const nodes = new Set([node]);
    for (const at of nodes) {
      if (this.plus.has(at) || (this.minus.has(at) && plus[fixed.find(at)] === 0)) break;
      for (const { to, wire, element } of steps[at]!) {
        if (wire ? !this.wires.has(wire.index) : this.isMetal(element!)) nodes.add(to);
      }
    }
    return nodes;
  }

  private isMetal(element: NetElement): boolean {
    return conducts(this.netlist, this.combination, this.solution, element);
  }
}

/** Whether a coil could feel wires at these nodes come off: it lies no farther than the nearest ends of sources. */
export function hasCoilNear(netlist: Netlist, nodes: readonly number[]): boolean {
  const coils = elementsOf(netlist, "coil");
  if (coils.length === 0) return false;
  const { steps, fixed, plus, minus } = pathsOf(netlist);
  const isRail = (node: number) => plus[fixed.find(node)] === 1 || minus[fixed.find(node)] === 1;
  const near = new Set(nodes);
  for (const node of near) {
    if (isRail(node)) continue;
    for (const { to } of steps[node]!) near.add(to);
    for (const to of beyondLoads(netlist)[node]!) near.add(to);
  }
  return coils.some(({ a, b }) => [a, b].some((node) => near.has(node) && !isRail(node)));
}
