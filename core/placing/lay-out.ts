import type { GridPoint } from "../document/index.ts";
import { moveBox, unionBox, type Box } from "../geometry/index.ts";
import { placeColumns } from "./columns.ts";
import type { Flow } from "./flow.ts";
import { Joined } from "./joined.ts";
import { ranksOf } from "./ranks.ts";
import { spread } from "./spread.ts";
import type { StandingPart } from "./standing-part.ts";

/** Between pieces of the drawing that no wire joins, grid steps. */
const APART = 3;
/** Left and top of the first part, grid steps. */
const MARGIN = 2;
/** Between the parts and the grounds under them: room for the returns. */
const RETURN_LANES = 3;
/** Width a sheet may have before the next piece goes underneath. */
const SHEET_WIDTH = 80;

interface Piece {
  readonly spots: ReadonlyMap<number, GridPoint>;
  readonly box: Box;
}

/** Places for these parts on an empty sheet, power flowing left to right; pieces no wire joins stand side by side, then below. */
export function layOut(
  parts: readonly StandingPart[],
  standing: readonly StandingPart[],
  flow: Flow,
): Map<number, GridPoint> {
  const ranks = ranksOf(standing, flow);
  const pieces = piecesOf(parts, standing.length, flow).map((piece) => layOutPiece(piece, ranks, flow));
  const area = pieces.reduce((sum, { box }) => sum + (box.right - box.left) * (box.bottom - box.top), 0);
  const widest = Math.max(SHEET_WIDTH, Math.ceil(1.5 * Math.sqrt(area)));
  const spots = new Map<number, GridPoint>();
  let [x, y, height] = [0, 0, 0];
  for (const { spots: own, box } of pieces) {
    if (x > 0 && x + box.right - box.left > widest) [x, y, height] = [0, y + height + APART, 0];
    for (const [index, at] of own) spots.set(index, [at[0] - box.left + x + MARGIN, at[1] - box.top + y + MARGIN]);
    x += box.right - box.left + APART;
    height = Math.max(height, box.bottom - box.top);
  }
  return spots;
}

/** Parts that wires join, in file order; all that have no wire make one piece at the end. */
function piecesOf(parts: readonly StandingPart[], count: number, flow: Flow): StandingPart[][] {
  const joined = new Joined(count);
  for (const { from, to } of flow.runs) joined.join(from, to);
  const pieces = new Map<number, StandingPart[]>();
  const loose: StandingPart[] = [];
  for (const one of parts) {
    const group = joined.groupOf(one.index);
    const piece = flow.runsOf[one.index]!.length === 0 ? loose : pieces.get(group);
    if (piece) piece.push(one);
    else pieces.set(group, [one]);
  }
  return loose.length === 0 ? [...pieces.values()] : [...pieces.values(), loose];
}

function layOutPiece(parts: readonly StandingPart[], ranks: readonly number[], flow: Flow): Piece {
  const byIndex = new Map(parts.map((one) => [one.index, one]));
  const beside = groundsBeside(parts, byIndex, flow);
  const above = withGrounds(
    parts.filter(({ index }) => !flow.isReturn[index]),
    beside,
    byIndex,
  );
  const spots = new Map([...placeColumns(above, ranks, flow)].map(([index, { x, y }]) => [index, [x, y] as GridPoint]));
  for (const [ground, { host, at }] of beside) {
    const [x, y] = spots.get(host)!;
    spots.set(ground, [x + at[0], y + at[1]]);
  }
  const box = boxOfSpots(above, spots);
  const below = parts.filter(({ index }) => flow.isReturn[index] && !beside.has(index));
  for (const [index, spot] of placeBelow(below, byIndex, flow, spots, box)) spots.set(index, spot);
  const whole = boxOfSpots([...above, ...below], spots)!;
  return { spots, box: whole };
}

function boxOfSpots(parts: readonly StandingPart[], spots: ReadonlyMap<number, GridPoint>): Box | null {
  const boxes = parts.map(({ index, room }) => moveBox(room, ...spots.get(index)!));
  return boxes.length === 0 ? null : boxes.reduce(unionBox);
}

type Beside = ReadonlyMap<number, { readonly host: number; readonly at: GridPoint }>;

/** A ground with one wire stands right beside the terminal it serves, and moves with that part; at most one to a part. */
function groundsBeside(
  parts: readonly StandingPart[],
  byIndex: ReadonlyMap<number, StandingPart>,
  { runsOf, isReturn }: Flow,
): Beside {
  const beside = new Map<number, { host: number; at: GridPoint }>();
  const hosts = new Set<number>();
  for (const { index, terminals } of parts) {
    if (!isReturn[index] || runsOf[index]!.length !== 1 || terminals.length !== 1 || terminals[0]!.exit !== "up")
      continue;
    const { other: host, theirs: terminal } = runsOf[index]![0]!;
    const { at, exit } = byIndex.get(host)?.terminals[terminal] ?? {};
    if (!at || isReturn[host] || hosts.has(host) || exit === "up" || exit === "any") continue;
    const across = exit === "left" ? -2 : exit === "right" ? 2 : 0;
    const own = terminals[0]!.at;
    beside.set(index, { host, at: [at[0] + across - own[0], at[1] + (across === 0 ? 2 : 1) - own[1]] });
    hosts.add(host);
  }
  return beside;
}

/** Parts with the room of a ground beside them added to their own. */
function withGrounds(
  parts: readonly StandingPart[],
  beside: Beside,
  byIndex: ReadonlyMap<number, StandingPart>,
): StandingPart[] {
  const added = new Map([...beside].map(([ground, { host, at }]) => [host, moveBox(byIndex.get(ground)!.room, ...at)]));
  return parts.map((one) => {
    const room = added.get(one.index);
    return room ? { ...one, room: unionBox(one.room, room) } : one;
  });
}

/** The negative side in rows under the rest, each part under the middle of what comes back to it. */
function placeBelow(
  below: readonly StandingPart[],
  byIndex: ReadonlyMap<number, StandingPart>,
  { runsOf, isReturn }: Flow,
  spots: ReadonlyMap<number, GridPoint>,
  above: Box | null,
): Map<number, GridPoint> {
  const wish = ({ index, terminals, room }: StandingPart): number => {
    const xs = runsOf[index]!.flatMap(({ mine, other, theirs }) => {
      const there = spots.get(other);
      if (!there || isReturn[other]) return [];
      return [there[0] + byIndex.get(other)!.terminals[theirs]!.at[0] - terminals[mine]!.at[0]];
    });
    return (xs.length === 0 ? (above?.left ?? 0) : xs.reduce((sum, x) => sum + x, 0) / xs.length) + room.left;
  };
  const placed = new Map<number, GridPoint>();
  const wishes = new Map(below.map((one) => [one, wish(one)]));
  const rowSize = Math.max(16, Math.ceil(Math.sqrt(below.length)));
  let top = above ? above.bottom + RETURN_LANES : 0;
  for (let start = 0; start < below.length; start += rowSize) {
    const row = below
      .slice(start, start + rowSize)
      .sort((a, b) => wishes.get(a)! - wishes.get(b)! || a.index - b.index);
    const lefts = spread(row.map((one) => ({ at: wishes.get(one)!, length: one.room.right - one.room.left + 1 })));
    row.forEach(({ index, room }, at) => placed.set(index, [lefts[at]! - room.left, top - room.top]));
    top += Math.max(...row.map(({ room }) => room.bottom - room.top)) + 1;
  }
  return placed;
}
