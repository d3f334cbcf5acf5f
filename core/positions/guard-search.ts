import type { NetElement } from "../netlist/index.ts";
import type { SourceStart } from "./source-starts.ts";
import type { Guard } from "./types.ts";
import { SeenStands, standAfter, type Stand, type WayGraph } from "./way-graph.ts";

/** `undefined`: not reached. `null`: reached with no device on the way. */
export type Reach = Guard | null | undefined;

/** Most states looked at from one source; beyond it positions are no longer told apart, which errs towards less protection. */
const MOST_STATES = 20_000;

interface Visit {
  readonly node: number;
  readonly stand: Stand;
  readonly guard: Guard | null;
}

/**
 * For every node the least protected way from one source: on each way the smallest rating protects, and of all ways the one with
 * the largest counts; an unknown device protects less than any known one, and no device least. A widest-path search over (node,
 * positions used so far).
 */
export function worstReach(graph: WayGraph, start: SourceStart): Reach[] {
  const reach: Reach[] = Array.from({ length: graph.steps.length }, () => undefined);
  const queue: Visit[][] = [];
  const push = (visit: Visit) => (queue[rank(visit.guard)] ??= []).push(visit);
  const ranks = new Ranks(graph, start);
  const rank = (guard: Guard | null) => ranks.of(guard);
  const seen = new SeenStands();
  let states = 0;
  push({ node: start.node, stand: new Map(), guard: start.own ?? null });
  for (let level = 0; level < ranks.count; level++) {
    for (let visit = queue[level]?.pop(); visit; visit = queue[level]?.pop()) {
      const stand: Stand = states > MOST_STATES ? new Map() : visit.stand;
      if (!seen.add(visit.node, stand)) continue;
      states++;
      if (reach[visit.node] === undefined) reach[visit.node] = visit.guard;
      for (const step of graph.steps[visit.node]!) {
        if (graph.ends[step.to] === 1) continue;
        const next = standAfter(stand, step.needs);
        if (next)
          push({ node: step.to, stand: next, guard: step.device ? safer(visit.guard, step.device) : visit.guard });
      }
    }
  }
  return reach;
}

/** The better protection of two on one way. Of equal ratings the one nearer the source is named. */
function safer(before: Guard | null, device: NetElement): Guard {
  const { spec, part } = device;
  if (spec.type !== "protection")
    throw new RangeError(`worstReach: element ${device.index} of "${part.part.id}" is no device`);
  const here: Guard = { at: spec.terminal ? `${part.part.id}.${spec.terminal}` : part.part.id, ratingA: spec.ratingA };
  if (!before) return here;
  if (here.ratingA === null) return before;
  if (before.ratingA === null) return here;
  return here.ratingA < before.ratingA ? here : before;
}

/** Puts protections in order, least first: none, unknown, then falling ratings. */
class Ranks {
  private readonly ratings: readonly number[];

  constructor(graph: WayGraph, start: SourceStart) {
    const ratings = new Set<number>();
    const note = (rating: number | null | undefined) => rating != null && ratings.add(rating);
    note(start.own?.ratingA);
    for (const steps of graph.steps) {
      for (const { device } of steps) if (device?.spec.type === "protection") note(device.spec.ratingA);
    }
    this.ratings = [...ratings].sort((one, other) => other - one);
  }

  get count(): number {
    return this.ratings.length + 2;
  }

  of(guard: Guard | null): number {
    if (guard === null) return 0;
    return guard.ratingA === null ? 1 : 2 + this.ratings.indexOf(guard.ratingA);
  }
}

/** Of two reaches from different sources, the less protected; not reached counts as none of a way. */
export function lessProtected(one: Reach, other: Reach): Reach {
  if (one === undefined) return other;
  if (other === undefined) return one;
  if (one === null || other === null) return null;
  if (one.ratingA === null || other.ratingA === null) return one.ratingA === null ? one : other;
  return other.ratingA > one.ratingA ? other : one;
}
