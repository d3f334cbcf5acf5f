import type { Conduction } from "./conduction.ts";
import type { Group } from "./groups.ts";
import type { Rails } from "./rails.ts";

/** Up to this many ways for groups to stand together are all looked at; above, one group varies while the others stand at their first. */
const MOST_TOGETHER = 2 ** 6;

/** Ways of one group that look alike from the rails, and so to every other group. */
type Alike = readonly Conduction[];

/**
 * The cases to solve so that every group has stood in each of its ways (`ways`, in the order of `groups`) beside every way of the
 * others that it could feel. Groups meet only in rails: most ways end in dead ends and are felt by nobody, so groups vary together.
 */
export function faultCases(
  rails: Rails,
  groups: readonly Group[],
  ways: readonly (readonly Conduction[])[],
): Conduction[][] {
  const alikes = groups.map((group, at) => alikeWays(rails, group, ways[at]!));
  return together(alikes).flatMap((chosen) => {
    const rounds = Math.max(1, ...chosen.map((alike) => alike.length));
    return Array.from({ length: rounds }, (_, round) => chosen.map((alike) => alike[round % alike.length]!));
  });
}

/** One set of alike ways from each group, in every combination or, past the budget, one group at a time. */
function together(alikes: readonly (readonly Alike[])[]): Alike[][] {
  const count = alikes.reduce((product, one) => product * one.length, 1);
  if (count > MOST_TOGETHER) {
    const first = alikes.map(([one]) => one!);
    return alikes.flatMap((one, at) => one.map((alike) => first.with(at, alike)));
  }
  return alikes.reduce<Alike[][]>((cases, one) => cases.flatMap((each) => one.map((alike) => [...each, alike])), [[]]);
}

/** The ways of a group put together by what of them lies between rails, most conductors first. */
function alikeWays(rails: Rails, group: Group, ways: readonly Conduction[]): Alike[] {
  const byBridge = new Map<string, Conduction[]>();
  for (const way of ways.toSorted((one, other) => other.size - one.size)) {
    const key = bridgeKey(rails, group, way);
    const list = byBridge.get(key);
    if (list) list.push(way);
    else byBridge.set(key, [way]);
  }
  return [...byBridge.values()];
}

/** Names what is left of a way once its dead ends are cut back: conductors and sources between one rail and another, or around a loop. */
function bridgeKey({ classOf, isRail }: Rails, group: Group, way: Conduction): string {
  const nodeOf = (node: number) => (isRail[classOf[node]!] === 1 ? RAIL : classOf[node]!);
  let edges = group.elements
    .filter(({ branch, spec }) => way.has(branch) || (spec.type === "diode" && spec.suppresses === undefined))
    .map(({ branch, a, b }) => ({ branch, a: nodeOf(a), b: nodeOf(b) }));
  for (let before = Infinity; edges.length < before;) {
    before = edges.length;
    const degree = new Map<number, number>();
    for (const { a, b } of edges) for (const node of [a, b]) degree.set(node, (degree.get(node) ?? 0) + 1);
    edges = edges.filter(({ a, b }) => [a, b].every((node) => node === RAIL || degree.get(node)! > 1));
  }
  return edges.map(({ branch }) => branch).join(" ");
}

/** Stands for every rail at once: current may go on from there. */
const RAIL = -1;
