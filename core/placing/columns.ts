import type { Flow } from "./flow.ts";
import { spread } from "./spread.ts";
import type { StandingPart } from "./standing-part.ts";

/** Sweeps over the columns, to the right and back in turn; more change little. The last goes left, so feeds run straight to what they feed. */
const SWEEPS = 6;
/** Between two columns, grid steps: room for wires to turn. */
const LANE = 2;
const MOST_LANES = 6;
/** Height over width up to which a column of parts is left whole. */
const FEWEST_ROWS = 16;

interface Spot {
  x: number;
  y: number;
}

/** Origins of the parts on the positive side: a column for each rank, each part as near as can be to what feeds it and what it feeds. */
export function placeColumns(parts: readonly StandingPart[], ranks: readonly number[], flow: Flow): Map<number, Spot> {
  const columns = columnsOf(parts, ranks);
  const spots = new Map<number, Spot>();
  const columnAt = new Map(columns.flatMap((column, at) => column.map((one) => [one.index, at] as const)));
  let x = 0;
  columns.forEach((column, at) => {
    const left = Math.min(...column.map(({ room }) => room.left));
    let y = 0;
    for (const one of column) {
      spots.set(one.index, { x: x - left, y: y - one.room.top });
      y += one.room.bottom - one.room.top;
    }
    x += Math.max(...column.map(({ room }) => room.right)) - left + LANE + lanesAfter(at, column, flow, columnAt);
  });
  const standing = new Map(parts.map((one) => [one.index, one]));
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const side = sweep % 2 === 0 ? "left" : "right";
    for (const column of side === "left" ? columns : columns.toReversed()) {
      settle(column, (one) => wishOf(one, standing, flow, spots, side), spots);
    }
  }
  return spots;
}

function columnsOf(parts: readonly StandingPart[], ranks: readonly number[]): StandingPart[][] {
  const byRank = new Map<number, StandingPart[]>();
  for (const one of parts) {
    const column = byRank.get(ranks[one.index]!);
    if (column) column.push(one);
    else byRank.set(ranks[one.index]!, [one]);
  }
  const mostRows = Math.max(FEWEST_ROWS, Math.ceil(1.5 * Math.sqrt(parts.length)));
  return [...byRank.keys()]
    .sort((a, b) => a - b)
    .flatMap((rank) => {
      const column = byRank.get(rank)!;
      const pieces = Math.ceil(column.length / mostRows);
      const size = Math.ceil(column.length / pieces);
      return Array.from({ length: pieces }, (_, at) => column.slice(at * size, (at + 1) * size)).filter(
        (piece) => piece.length > 0,
      );
    });
}

/** More lanes where more wires leave to the right. */
function lanesAfter(
  at: number,
  column: readonly StandingPart[],
  { runsOf }: Flow,
  columnAt: ReadonlyMap<number, number>,
): number {
  let leaving = 0;
  for (const { index } of column) {
    for (const { other, isReturn } of runsOf[index]!) {
      const there = columnAt.get(other);
      if (!isReturn && there !== undefined && there > at) leaving++;
    }
  }
  return Math.min(MOST_LANES, Math.ceil(leaving / 2));
}

/** `mean` of all places its wires lead to, to order a column by; `level` with one of them, to stand at. */
interface Wish {
  readonly mean: number;
  readonly level: number;
}

/** Where the part's origin would like to be: level with a terminal its wires lead to, the middle one, so that one wire at least runs straight. */
function wishOf(
  { index, terminals }: StandingPart,
  standing: ReadonlyMap<number, StandingPart>,
  { runsOf }: Flow,
  spots: ReadonlyMap<number, Spot>,
  side: "left" | "right",
): Wish {
  const own = spots.get(index)!;
  const wishes: number[] = [];
  for (const { mine, other, theirs, isReturn } of runsOf[index]!) {
    const there = spots.get(other);
    if (isReturn || !there || (side === "left" && there.x >= own.x) || (side === "right" && there.x <= own.x)) continue;
    const far = standing.get(other)!.terminals[theirs]!;
    const near = terminals[mine]!;
    wishes.push(there.y + far.at[1] + lift(far.exit) - near.at[1] - lift(near.exit));
  }
  if (wishes.length === 0) return { mean: own.y, level: own.y };
  wishes.sort((a, b) => a - b);
  return { mean: wishes.reduce((sum, wish) => sum + wish, 0) / wishes.length, level: wishes[wishes.length >> 1]! };
}

/** A wire that leaves upwards or downwards turns two steps on. */
function lift(exit: string): number {
  return exit === "up" ? -2 : exit === "down" ? 2 : 0;
}

/** Reorders a column by what its parts wish, then spreads them so that none covers another. */
function settle(column: StandingPart[], wishOf: (one: StandingPart) => Wish, spots: Map<number, Spot>): void {
  const wishes = new Map(column.map((one) => [one, wishOf(one)]));
  column.sort((a, b) => wishes.get(a)!.mean - wishes.get(b)!.mean || a.index - b.index);
  const tops = spread(
    column.map((one) => ({ at: wishes.get(one)!.level + one.room.top, length: one.room.bottom - one.room.top })),
  );
  column.forEach((one, at) => {
    spots.get(one.index)!.y = tops[at]! - one.room.top;
  });
}
