import type { Document, Edit, GridPoint, Part } from "../document/index.ts";
import { boxOfPoints, moveBox, stepOf, unionBox, type Box, type Point } from "../geometry/index.ts";
import { flowOf, type Flow } from "./flow.ts";
import { TakenRoom } from "./free-spot.ts";
import { layOut } from "./lay-out.ts";
import { standingPart, type StandingPart } from "./standing-part.ts";

/** Up to this many parts are fitted one by one among those that stand; more are laid out afresh below them. */
const MOST_FITTED = 80;
/** From a terminal to the part that is put beside it, grid steps. */
const BESIDE = 4;

/**
 * The document with a place for every part that has none: sources left, loads right, grounds at the bottom, nothing on top of
 * another. Parts that have a place keep it. The same document always gives the same places.
 */
export function placeMissing(document: Document): Document {
  if (document.parts.every(({ at }) => at)) return document;
  const spots = spotsFor(document);
  return { ...document, parts: document.parts.map((part, at) => (part.at ? part : { ...part, at: spots.get(at)! })) };
}

/** Edits that lay the whole drawing out afresh: every part placed and turned upright, corners of wires given up. */
export function tidyUp(document: Document): Edit[] {
  const upright = document.parts.map(({ id, kind, label = "", props = {} }): Part => ({ id, kind, label, props }));
  const spots = spotsFor({ ...document, parts: upright });
  const moves = document.parts.map((part, at): Edit => {
    const turned = part.turn ? { turn: 0 as const } : {};
    const flipped = part.flip ? { flip: false } : {};
    return { op: "set-part", id: part.id, change: { at: spots.get(at)!, ...turned, ...flipped } };
  });
  const corners = document.wires.filter(({ via }) => via !== undefined && via.length > 0);
  return [...moves, ...corners.map(({ id }): Edit => ({ op: "set-wire", id, change: { via: undefined } }))];
}

function spotsFor(document: Document): Map<number, GridPoint> {
  const standing = document.parts.map(standingPart);
  const flow = flowOf(document, standing);
  const placed = standing.filter(({ part }) => part.at);
  const missing = standing.filter(({ part }) => !part.at);
  if (placed.length > 0 && missing.length <= MOST_FITTED) return fitAmong(standing, missing, flow);
  const spots = layOut(missing, standing, flow);
  const below = placed.length === 0 ? null : placed.map((one) => roomAt(one, one.part.at!)).reduce(unionBox);
  return below
    ? new Map([...spots].map(([at, [x, y]]) => [at, [x + Math.round(below.left), y + Math.ceil(below.bottom)]]))
    : spots;
}

/** Each missing part beside what it is wired to, those next to parts that stand first. */
function fitAmong(
  standing: readonly StandingPart[],
  missing: readonly StandingPart[],
  flow: Flow,
): Map<number, GridPoint> {
  const spots = new Map(standing.flatMap(({ index, part }) => (part.at ? [[index, part.at] as const] : [])));
  const taken = new TakenRoom();
  for (const [index, at] of spots) taken.take(roomAt(standing[index]!, at));
  const waiting = new Set(missing);
  while (waiting.size > 0) {
    const next =
      [...waiting].find(({ index }) => flow.runsOf[index]!.some(({ other }) => spots.has(other))) ?? [...waiting][0]!;
    const near = besideNeighbours(next, standing, flow, spots) ?? underAll(spots.values());
    const at = taken.spotFor(next.room, near);
    spots.set(next.index, at);
    taken.take(roomAt(next, at));
    waiting.delete(next);
  }
  return spots;
}

/** Mean of the origins that would put its terminals a few steps before those its wires lead to. */
function besideNeighbours(
  { index, terminals }: StandingPart,
  standing: readonly StandingPart[],
  flow: Flow,
  spots: ReadonlyMap<number, GridPoint>,
): Point | null {
  const wishes = flow.runsOf[index]!.flatMap(({ mine, other, theirs }): Point[] => {
    const there = spots.get(other);
    if (!there) return [];
    const far = standing[other]!.terminals[theirs]!;
    const [dx, dy] = stepOf(far.exit === "any" ? "right" : far.exit);
    const near = terminals[mine]!.at;
    return [[there[0] + far.at[0] + BESIDE * dx - near[0], there[1] + far.at[1] + BESIDE * dy - near[1]]];
  });
  if (wishes.length === 0) return null;
  const mean = (axis: 0 | 1) => wishes.reduce((sum, wish) => sum + wish[axis], 0) / wishes.length;
  return [mean(0), mean(1)];
}

function underAll(spots: Iterable<GridPoint>): Point {
  const box = boxOfPoints(spots);
  return box ? [box.left, box.bottom + BESIDE] : [0, 0];
}

function roomAt({ room }: StandingPart, [x, y]: GridPoint): Box {
  return moveBox(room, x, y);
}
