/**
 * The order in which star-mesh elimination takes the vertices of a graph.
 *
 * Idea: vehicle circuits are nearly trees. A vertex with one neighbour just goes; one with two neighbours goes and leaves an
 * edge between them. Stacks of such vertices, ends first, are emptied in linear time; what then remains (the ties between returns) goes
 * by minimum degree. Vertices named in `last` wait until everything else is gone, so each network ends in its own zero. Those marked in
 * `late` go after the rest of the tree parts: few positions then lie between them and the end, and their volts come cheaply.
 */
import { EliminationRecord, planOf } from "./elimination-plan.ts";
import type { EliminationPlan } from "./elimination-plan.ts";
import { ShrinkingGraph } from "./shrinking-graph.ts";

/** Above this many neighbours two edges side by side are let be until the tree part is gone: a hub's list is long to look through. */
const HUB = 12;

/**
 * Plans the elimination of the graph with edges ends[2e] - ends[2e + 1] (repeats allowed, no loops). Vertices of `last` are
 * taken at the very end, in the order given; those marked in `late` after others like them. Near-linear for graphs that are nearly trees.
 */
export function planElimination(
  vertexCount: number,
  ends: Int32Array,
  last: readonly number[],
  late = new Uint8Array(vertexCount),
): EliminationPlan {
  const graph = new ShrinkingGraph(vertexCount, ends);
  const record = new EliminationRecord(vertexCount, ends.length >> 1);
  const waits = new Uint8Array(vertexCount);
  for (const v of last) waits[v] = 1;
  eliminateTreeParts(graph, record, waits, late);
  graph.mergeParallel();
  eliminateByDegree(graph, record, waits);
  const neighbours: number[] = [];
  const halves: number[] = [];
  for (const v of last) eliminateOne(graph, record, v, neighbours, halves);
  return planOf(record);
}

function eliminateTreeParts(
  graph: ShrinkingGraph,
  record: EliminationRecord,
  waits: Uint8Array,
  late: Uint8Array,
): void {
  const [ends, betweens, rest]: [number[], number[], number[]] = [[], [], []];
  const file = (v: number): void => {
    if (waits[v] === 1 || graph.degree[v]! > 2) return;
    if (late[v] === 1) rest.push(v);
    else if (graph.degree[v] === 2) betweens.push(v);
    else ends.push(v);
  };
  for (let v = graph.head.length - 1; v >= 0; v--) file(v);
  const neighbours: number[] = [];
  const halves: number[] = [];
  for (;;) {
    const v = ends.pop() ?? betweens.pop() ?? rest.pop();
    if (v === undefined) return;
    if (graph.gone[v] === 1) continue;
    const count = graph.collect(v, neighbours, halves);
    record.add(v, neighbours, count);
    if (count === 1) graph.degree[neighbours[0]!]!--;
    else if (count === 2) bridge(graph, halves, neighbours[0]!, neighbours[1]!);
    graph.gone[v] = 1;
    for (let i = 0; i < count; i++) file(neighbours[i]!);
  }
}

/** Joins the two neighbours of a vertex that goes, unless they are joined already. */
function bridge(graph: ShrinkingGraph, halves: readonly number[], a: number, b: number): void {
  const areHubs = graph.degree[a]! > HUB && graph.degree[b]! > HUB;
  if (!areHubs && graph.joined(a, b)) {
    graph.degree[a]!--;
    graph.degree[b]!--;
  } else graph.shortCircuit(halves[0]!, halves[1]!, a, b);
}

function eliminateByDegree(graph: ShrinkingGraph, record: EliminationRecord, waits: Uint8Array): void {
  const queue = new DegreeQueue();
  for (let v = 0; v < graph.head.length; v++) if (!graph.gone[v] && !waits[v]) queue.add(v, graph.degree[v]!);
  const neighbours: number[] = [];
  const halves: number[] = [];
  for (let v = queue.take(graph); v >= 0; v = queue.take(graph)) {
    const count = eliminateOne(graph, record, v, neighbours, halves);
    for (let i = 0; i < count; i++) {
      const other = neighbours[i]!;
      if (!waits[other]) queue.add(other, graph.degree[other]!);
    }
  }
}

/** Takes one vertex out and joins all its neighbours with one another. */
function eliminateOne(
  graph: ShrinkingGraph,
  record: EliminationRecord,
  v: number,
  neighbours: number[],
  halves: number[],
): number {
  const count = graph.collect(v, neighbours, halves);
  graph.gone[v] = 1;
  record.add(v, neighbours, count);
  for (let i = 0; i < count; i++) graph.degree[neighbours[i]!]!--;
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const a = neighbours[i]!;
      const b = neighbours[j]!;
      if (!graph.joined(a, b)) graph.join(a, b);
    }
  }
  return count;
}

/** Vertices by present degree, lowest first; a vertex whose degree changes is simply filed again. */
class DegreeQueue {
  private readonly bins: number[][] = [];
  private lowest = 0;

  add(v: number, degree: number): void {
    (this.bins[degree] ??= []).push(v);
    if (degree < this.lowest) this.lowest = degree;
  }

  take(graph: ShrinkingGraph): number {
    for (; this.lowest < this.bins.length; this.lowest++) {
      const bin = this.bins[this.lowest];
      while (bin && bin.length > 0) {
        const v = bin.pop()!;
        if (!graph.gone[v] && graph.degree[v] === this.lowest) return v;
      }
    }
    return -1;
  }
}
