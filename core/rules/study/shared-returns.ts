import type { NetTerminal, NetWire } from "../../netlist/index.ts";
import type { Study } from "../rule.ts";
import { consumersOf } from "./elements.ts";
import { pathsOf, type Paths, type Step } from "./spread.ts";

export type Consumer = ReturnType<typeof consumersOf>[number];

/** A wire that is the only way back of several consumers. */
export interface SharedReturn {
  readonly wire: NetWire;
  /** Its end on the consumers' side. */
  readonly behind: NetTerminal;
  /** Whether a node lies behind it, on the consumers' side. */
  isBehind(node: number): boolean;
  readonly serves: readonly Consumer[];
}

const kept = new WeakMap<Study, readonly SharedReturn[]>();

/** Return wires whose loss cuts off the way back of consumers in at least two parts. */
export function sharedReturns(study: Study): readonly SharedReturn[] {
  let shared = kept.get(study);
  if (!shared) {
    shared = findShared(study);
    kept.set(study, shared);
  }
  return shared;
}

function findShared(study: Study): SharedReturn[] {
  const { netlist, standing } = study;
  const search = searchReturns(netlist.nodeCount, pathsOf(netlist));
  const consumers = consumersOf(netlist);
  return search.bridges.flatMap(({ wire, behind, first, last }): SharedReturn[] => {
    if (standing.wires[wire.index]!.guard !== undefined) return [];
    const isBehind = (node: number) => search.order[node]! >= first && search.order[node]! <= last;
    const serves = consumers.filter(({ a, b }) => isBehind(a) !== isBehind(b));
    return new Set(serves.map(({ part }) => part)).size < 2 ? [] : [{ wire, behind, isBehind, serves }];
  });
}

interface Bridge {
  readonly wire: NetWire;
  readonly behind: NetTerminal;
  /** Everything behind it was met from `first` to `last` in the order of the search. */
  readonly first: number;
  readonly last: number;
}

interface Search {
  /** By node: when it was met, from 1; 0 never. */
  readonly order: Int32Array;
  readonly bridges: readonly Bridge[];
}

interface Visit {
  readonly node: number;
  /** The wire or element come by, so as not to go straight back over it. */
  readonly by: unknown;
  next: number;
}

/**
 * Walks the returns away from the sources' negatives, depth first, and notes every wire that nothing goes around (a bridge).
 * All negatives count as one place; the metal of positives is not entered.
 */
function searchReturns(nodeCount: number, paths: Paths): Search {
  const search = new ReturnSearch(nodeCount, paths);
  for (const root of paths.negatives) search.from(root);
  return search;
}

class ReturnSearch implements Search {
  readonly order: Int32Array;
  readonly bridges: Bridge[] = [];
  /** By node: the earliest-met place that can be reached from behind it; 1 stands for all negatives. */
  private readonly low: Int32Array;
  private readonly stack: Visit[] = [];
  private readonly paths: Paths;
  private met = 1;

  constructor(nodeCount: number, paths: Paths) {
    this.order = new Int32Array(nodeCount);
    this.low = new Int32Array(nodeCount);
    this.paths = paths;
  }

  from(root: number): void {
    this.enter(root, null);
    for (let visit = this.stack.at(-1); visit; visit = this.stack.at(-1)) {
      const step = this.paths.steps[visit.node]![visit.next++];
      if (step) this.look(visit, step);
      else this.leave();
    }
  }

  private enter(node: number, by: unknown): void {
    this.order[node] = this.low[node] = ++this.met;
    this.stack.push({ node, by, next: 0 });
  }

  private look(visit: Visit, { to, wire, element }: Step): void {
    const by = wire ?? element;
    const { negatives, fixed, plus } = this.paths;
    if (by === visit.by) return;
    if (negatives.has(to)) this.low[visit.node] = 1;
    else if (this.order[to] !== 0) this.low[visit.node] = Math.min(this.low[visit.node]!, this.order[to]!);
    else if (plus[fixed.find(to)] === 0) this.enter(to, by);
  }

  private leave(): void {
    const { node } = this.stack.pop()!;
    const parent = this.stack.at(-1);
    if (!parent) return;
    const { wire } = this.paths.steps[parent.node]![parent.next - 1]!;
    this.low[parent.node] = Math.min(this.low[parent.node]!, this.low[node]!);
    if (!wire || this.low[node] !== this.order[node]) return;
    const behind = wire.from.node === node ? wire.from : wire.to;
    this.bridges.push({ wire, behind, first: this.order[node]!, last: this.met });
  }
}
