import { growBox, nearestOnSegment, type Box, type Point } from "../../geometry/index.ts";
import { inkLine, RULE_MM } from "../layout/index.ts";
import type { Clearings } from "./clearings.ts";
import type { Run } from "./own-runs.ts";
import { blockAt, blockBox, blockHeight, blockInk, blockWidth, HALF_LINE_MM, type TextBlock } from "./text-block.ts";

/** Lettering that found its place, and the thin line that ties it to what it names when it stands apart. */
export interface PlacedLettering {
  readonly blocks: readonly TextBlock[];
  readonly leader: readonly [Point, Point] | null;
}

/** What a wire may say, in the forms it may be set: on one line, and as what stands over and under the wire. */
export interface WireWords {
  readonly line: string;
  readonly over: string;
  readonly under: string;
}

const GAP_MM = 0.8;
const BESIDE_MM = 1.5;
const ARROW_MM = 2;
const LEADER_STEP_MM = 2.5;
const LONGEST_LEADER_MM = 60;
/** Where a leader may point: at the longest runs, and where on them. */
const ANCHORED_RUNS = 4;
const ANCHORS = [0.5, 0.25, 0.75];
/** Where along a run lettering is tried, middle first. */
const ALONG = [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92];

/**
 * A free place for a wire's words: along its runs in the order given, on one line, else split over and under it; then anywhere near
 * with a leader. The place is blocked for what comes after. `null` when nothing is free.
 */
export function placeWireWords(words: WireWords, runs: readonly Run[], free: Clearings): PlacedLettering | null {
  for (const candidate of runs.flatMap((run) => alongRun(words, run))) {
    if (settle(candidate, free)) return { blocks: candidate, leader: null };
  }
  const anchors = runs
    .slice(0, ANCHORED_RUNS)
    .flatMap(([a, b]) => ANCHORS.map((t): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]));
  return withLeader(
    [words.over, words.under].filter((line) => line !== ""),
    anchors,
    free,
  );
}

/** A free place for a part's words: where the drawing has them, else round its box, else near it with a leader. */
export function placePartWords(block: TextBlock, box: Box, free: Clearings): PlacedLettering | null {
  for (const candidate of [block, ...aroundBox(block.lines, box)]) {
    if (settle([candidate], free)) return { blocks: [candidate], leader: null };
  }
  const [midX, midY] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  return withLeader(
    block.lines,
    [
      [midX, box.top],
      [midX, box.bottom],
      [box.right, midY],
      [box.left, midY],
    ],
    free,
  );
}

/** Lettering inside a symbol (terminal numbers): where it is drawn, else the nearest clear spot within 6 mm. */
export function placeMark(block: TextBlock, free: Clearings): TextBlock {
  const [x, y] = block.at;
  const shifts = [0, 0.8, 1.6, 2.4, 3.2, 4, 5, 6].flatMap((by): Point[] =>
    by === 0
      ? [[0, 0]]
      : [
          [0, -by],
          [0, by],
          [-by, 0],
          [by, 0],
          [by, -by],
          [-by, -by],
          [by, by],
          [-by, by],
        ],
  );
  for (const [dx, dy] of shifts) {
    const candidate = { ...block, at: [x + dx, y + dy] as Point };
    if (settle([candidate], free)) return candidate;
  }
  free.blockBox(blockBox(block));
  return block;
}

export function placedInk({ blocks, leader }: PlacedLettering): string[] {
  const lines = blocks.flatMap(blockInk);
  if (!leader) return lines;
  return [inkLine(leader, { widthMm: RULE_MM.thin }), arrowInk(leader), ...lines];
}

/** A slim arrowhead: a dot would pass for a joint. */
function arrowInk([from, tip]: readonly [Point, Point]): string {
  const length = Math.hypot(tip[0] - from[0], tip[1] - from[1]) || 1;
  const [dx, dy] = [(tip[0] - from[0]) / length, (tip[1] - from[1]) / length];
  const wing = (side: number): Point => [
    tip[0] - ARROW_MM * dx + side * dy * 0.5,
    tip[1] - ARROW_MM * dy - side * dx * 0.5,
  ];
  return inkLine([wing(1), tip, wing(-1)], { closed: true, fill: "black", widthMm: RULE_MM.thin });
}

function settle(blocks: readonly TextBlock[], free: Clearings): boolean {
  const boxes = blocks.map(blockBox);
  if (!boxes.every((box) => free.isClear(box))) return false;
  for (const box of boxes) free.blockBox(box);
  return true;
}

function alongRun(words: WireWords, [a, b]: Run): TextBlock[][] {
  return a[1] === b[1]
    ? alongLevel(words, Math.min(a[0], b[0]), Math.max(a[0], b[0]), a[1])
    : alongUpright(words, a, b);
}

function alongLevel({ line, over, under }: WireWords, left: number, right: number, y: number): TextBlock[][] {
  const half = HALF_LINE_MM + GAP_MM;
  const block = (text: string, x: number, at: number): TextBlock => ({ lines: [text], at: [x, at], anchor: "middle" });
  const places = (width: number) =>
    width > (right - left) * 1.35 ? [] : ALONG.map((t) => clampMiddle(left, right, width, t));
  const single = places(blockWidth([line])).flatMap((x) => [[block(line, x, y - half)], [block(line, x, y + half)]]);
  const split = places(under === "" ? Infinity : blockWidth([over, under])).flatMap((x) => {
    const pair = (at: number): TextBlock => ({ lines: [over, under], at: [x, at], anchor: "middle" });
    const height = blockHeight([over, under]) - 2 * HALF_LINE_MM;
    return [[block(over, x, y - half), block(under, x, y + half)], [pair(y - half - height)], [pair(y + half)]];
  });
  return [...single, ...split];
}

function alongUpright({ line, over, under }: WireWords, a: Point, b: Point): TextBlock[][] {
  const [top, bottom] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])];
  const lines = [over, under].filter((each) => each !== "");
  const height = blockHeight(lines);
  const beside = height > bottom - top + 2 ? [] : ALONG.map((t) => clampMiddle(top, bottom, height, t));
  const level = beside.flatMap((middle): TextBlock[][] => {
    const y = middle - height / 2 + HALF_LINE_MM;
    return [
      [{ lines, at: [a[0] + BESIDE_MM, y], anchor: "start" }],
      [{ lines, at: [a[0] - BESIDE_MM, y], anchor: "end" }],
    ];
  });
  const width = blockWidth([line]);
  const turned = width > bottom - top ? [] : ALONG.map((t) => clampMiddle(top, bottom, width, t));
  const half = HALF_LINE_MM + GAP_MM;
  const upright = turned.flatMap((y): TextBlock[][] =>
    [a[0] - half, a[0] + half].map((x) => [{ lines: [line], at: [x, y], anchor: "middle", upright: true }]),
  );
  return [...level, ...upright];
}

/** Middle of a piece of this length at the fraction `t` of the run, kept inside the run where it fits. */
function clampMiddle(from: number, to: number, length: number, t: number): number {
  if (length >= to - from) return (from + to) / 2;
  return Math.min(to - length / 2, Math.max(from + length / 2, from + (to - from) * t));
}

/** Over, under and beside the box, then at its corners. */
function aroundBox(lines: readonly string[], box: Box): TextBlock[] {
  const height = blockHeight(lines);
  const midX = (box.left + box.right) / 2;
  const [over, under] = [box.top - GAP_MM - height + HALF_LINE_MM, box.bottom + GAP_MM + HALF_LINE_MM];
  const level = (box.top + box.bottom - height) / 2 + HALF_LINE_MM;
  const [before, after] = [box.left - BESIDE_MM, box.right + BESIDE_MM];
  const places: readonly (readonly [number, number, TextBlock["anchor"]])[] = [
    [midX, over, "middle"],
    [midX, under, "middle"],
    [after, level, "start"],
    [before, level, "end"],
    [box.left, over, "start"],
    [box.right, over, "end"],
    [box.left, under, "start"],
    [box.right, under, "end"],
    [after, over, "start"],
    [before, over, "end"],
    [after, under, "start"],
    [before, under, "end"],
  ];
  return places.map(([x, y, anchor]) => ({ lines, at: [x, y], anchor }));
}

function withLeader(lines: readonly string[], anchors: readonly Point[], free: Clearings): PlacedLettering | null {
  const [width, height] = [blockWidth(lines), blockHeight(lines)];
  for (let reach = LEADER_STEP_MM; reach <= LONGEST_LEADER_MM; reach += LEADER_STEP_MM) {
    const ring = ringOf(reach);
    for (const anchor of anchors) {
      for (const [dx, dy] of ring) {
        const left = dx > 0 ? anchor[0] + dx : anchor[0] + dx - width;
        const block = blockAt(lines, left, anchor[1] + dy - height / 2);
        const box = blockBox(block);
        if (!free.isClear(box)) continue;
        const from = nearestOnBox(growBox(box, 0.4), anchor);
        if (!free.isLineClear(from, anchor)) continue;
        free.blockBox(box);
        free.blockLine(from, anchor);
        return { blocks: [block], leader: [from, anchor] };
      }
    }
  }
  return null;
}

function ringOf(reach: number): Point[] {
  return Array.from({ length: 16 }, (_, at): Point => {
    const angle = ((at * 5) % 16) * (Math.PI / 8) + Math.PI / 16;
    return [reach * Math.cos(angle), reach * Math.sin(angle)];
  });
}

function nearestOnBox(box: Box, point: Point): Point {
  const middle = (box.top + box.bottom) / 2;
  const side = point[0] < box.left ? box.left : point[0] > box.right ? box.right : null;
  if (side !== null)
    return [side, Math.min(box.bottom, Math.max(box.top, Math.abs(point[1] - middle) < 2 ? point[1] : middle))];
  const y = point[1] < box.top ? box.top : box.bottom;
  return nearestOnSegment(point, [box.left, y], [box.right, y]);
}
