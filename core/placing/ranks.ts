import type { Flow } from "./flow.ts";
import type { StandingPart } from "./standing-part.ts";

/** Two parts of which the second stands `steps` columns right of the first, or further. */
interface Order {
  readonly before: number;
  readonly after: number;
  readonly steps: 0 | 1;
}

/** A longer chain begins again at the left: no real drawing has one, and a sheet has an end. */
const MOST_COLUMNS = 300;

/**
 * Column of each part, 0 at the sources, so that power flows to the right; parts on the negative side have none that counts.
 * Loops are opened where a search from the sources first closes them.
 */
export function ranksOf(standing: readonly StandingPart[], flow: Flow): number[] {
  const distance = distancesFromSources(standing.length, flow);
  const orders = flow.runs.flatMap((run): Order[] => {
    if (run.isReturn) return [];
    const side =
      outwardness(standing, flow, run.from, run.fromTerminal) - outwardness(standing, flow, run.to, run.toTerminal);
    const nearer = distance[run.from]! <= distance[run.to]!;
    const forwards = side === 0 ? nearer : side > 0;
    const [before, after] = forwards ? [run.from, run.to] : [run.to, run.from];
    const chained =
      side === 0 && isUse(standing, run.from, run.fromTerminal) && isUse(standing, run.to, run.toTerminal);
    return [{ before, after, steps: chained ? 0 : 1 }];
  });
  const after = listed(standing.length, orders);
  const sequence = sourcesFirst(distance);
  const ranks = longestWays(openLoops(after, sequence), standing.length);
  return pulledRight(ranks, standing, after).map((rank) => rank % MOST_COLUMNS);
}

/** How surely current leaves here: 2 a source's positive, 1 a terminal on the right, -1 one on the left. */
function outwardness(standing: readonly StandingPart[], flow: Flow, part: number, terminal: number): number {
  const { terminals, elements } = standing[part]!;
  const { name, exit } = terminals[terminal]!;
  if (flow.isSource[part] && elements.some((element) => element.type === "source" && element.plus === name)) return 2;
  return exit === "right" ? 1 : exit === "left" ? -1 : 0;
}

function isUse(standing: readonly StandingPart[], part: number, terminal: number): boolean {
  const { terminals, elements } = standing[part]!;
  const { name } = terminals[terminal]!;
  return elements.some(
    (element) => element.type === "load" && element.role === "use" && (element.a === name || element.b === name),
  );
}

function distancesFromSources(count: number, { runsOf, isSource }: Flow): number[] {
  const distance = Array.from({ length: count }, () => Infinity);
  const queue = isSource.flatMap((source, part) => (source ? [part] : []));
  for (const part of queue) distance[part] = 0;
  for (const part of queue) {
    for (const { other, isReturn } of runsOf[part]!) {
      if (isReturn || distance[other] !== Infinity) continue;
      distance[other] = distance[part]! + 1;
      queue.push(other);
    }
  }
  return distance;
}

function listed(count: number, orders: readonly Order[]): Order[][] {
  const after: Order[][] = Array.from({ length: count }, () => []);
  for (const order of orders) after[order.before]!.push(order);
  return after;
}

function sourcesFirst(distance: readonly number[]): number[] {
  const parts = distance.map((_, part) => part);
  return parts.sort((a, b) => (distance[a] === distance[b] ? a - b : distance[a]! - distance[b]!));
}

/** Orders that close a loop fall away; what is left comes with the parts in reverse order of flow. */
function openLoops(after: readonly (readonly Order[])[], sequence: readonly number[]) {
  const state = new Uint8Array(after.length);
  const kept: Order[][] = after.map(() => []);
  const backwards: number[] = [];
  for (const start of sequence) {
    if (state[start] !== 0) continue;
    const way = [{ part: start, next: 0 }];
    state[start] = 1;
    while (way.length > 0) {
      const here = way.at(-1)!;
      const order = after[here.part]![here.next++];
      if (!order) {
        state[here.part] = 2;
        backwards.push(here.part);
        way.pop();
        continue;
      }
      if (state[order.after] === 1) continue;
      kept[here.part]!.push(order);
      if (state[order.after] === 2) continue;
      state[order.after] = 1;
      way.push({ part: order.after, next: 0 });
    }
  }
  return { kept, forwards: backwards.reverse() };
}

function longestWays({ kept, forwards }: ReturnType<typeof openLoops>, count: number): number[] {
  const ranks = Array.from({ length: count }, () => 0);
  for (const part of forwards) {
    for (const { after, steps } of kept[part]!) ranks[after] = Math.max(ranks[after]!, ranks[part]! + steps);
  }
  return ranks;
}

/** A part nothing leads to (a trigger, a second feed) stands just left of what it leads to; what gives a network its zero stays left. */
function pulledRight(
  ranks: readonly number[],
  standing: readonly StandingPart[],
  after: readonly (readonly Order[])[],
): number[] {
  return ranks.map((rank, part) => {
    const staysLeft = standing[part]!.elements.some((element) => element.type === "source" && element.zero);
    if (rank > 0 || staysLeft) return rank;
    const next = after[part]!.reduce((least, order) => Math.min(least, ranks[order.after]! - order.steps), Infinity);
    return next === Infinity ? rank : Math.max(0, next);
  });
}
