import { growBox, routeLength, type Box, type Point } from "../../geometry/index.ts";
import type { Lettering, PartPicture } from "../../picture/index.ts";
import { fitText, inkCircle, inkLine, RULE_MM, SMALLEST_MM } from "../layout/index.ts";
import { clearings, type Clearings } from "./clearings.ts";
import {
  placedInk,
  placeMark,
  placePartWords,
  placeWireWords,
  type PlacedLettering,
  type WireWords,
} from "./lettering-places.ts";
import { MARK_REACH_MM, terminalMarkInk, type TerminalMark } from "./mark-legend.ts";
import { ownRuns } from "./own-runs.ts";
import { strokeInk } from "./symbol-ink.ts";
import { blockBox, blockInk, type TextBlock } from "./text-block.ts";
import type { Tile, WirePiece } from "./tiles.ts";
import { boxOnPage, onPage, viewInto, type View } from "./view.ts";
import { wireInk, type WireLook } from "./wire-ink.ts";

/** What the drawing says beyond its lines. */
export interface DrawingWords {
  /** Of a part, by its id: "F1 Lamps". */
  partName(id: string): string;
  wireLook(id: string): WireLook;
  wireWords(id: string): WireWords;
  /** By terminal address; `null`: none. */
  terminalMark(address: string): TerminalMark | null;
}

export interface DrawnPage {
  readonly ink: readonly string[];
  /** Bottom of what was drawn, millimetres. */
  readonly bottomMm: number;
  /** Wires and parts whose words found no room, or only their id did. */
  readonly crowded: readonly string[];
}

export interface PageSetting {
  /** Room for symbols and wires. */
  readonly room: Box;
  readonly mmPerStep: number;
  readonly atTop: boolean;
  readonly joints: readonly Point[];
  /** Where a wire cut at the page's edge goes on: "page 2". */
  continues(piece: WirePiece, end: "start" | "end"): string;
}

const JOINT_MM = 0.75;
const HALF_STROKE_MM = 0.1;
const ROUNDS = 4;
/** With more left out than this the page is simply too small. */
const WORTH_A_ROUND = 6;
/** Longer names are cut on the drawing; the lists give them in full. */
const LONGEST_NAME_MM = 48;

/**
 * One page of the drawing: symbols, wires, marks, and lettering of 9 pt that touches nothing. What found no room is tried again,
 * choosing before the rest; the best of a few rounds is taken.
 */
export function drawPage(tile: Tile, words: DrawingWords, setting: PageSetting): DrawnPage {
  let first: ReadonlySet<string> = new Set();
  let best: DrawnPage | null = null;
  for (let round = 0; round < ROUNDS; round++) {
    const page = drawRound(tile, words, setting, first);
    if (best === null || page.crowded.length < best.crowded.length) best = page;
    if (best.crowded.length === 0 || best.crowded.length > WORTH_A_ROUND) break;
    first = new Set([...page.crowded, ...first]);
  }
  return best!;
}

/** `first`: ids of wires and parts that choose their place before the others. */
function drawRound(tile: Tile, words: DrawingWords, setting: PageSetting, first: ReadonlySet<string>): DrawnPage {
  const view = viewInto(tile.box, setting.room, setting.mmPerStep, setting.atTop);
  const free = clearings(setting.room);
  const routes = tile.wires.map((piece) => ({ piece, route: piece.route.map((point) => onPage(view, point)) }));
  for (const { route } of routes) for (let at = 1; at < route.length; at++) free.blockLine(route[at - 1]!, route[at]!);
  const marks = terminalMarks(tile, words, view, free);
  const lettering = tile.parts.flatMap((part) => symbolLettering(part, view, free));
  for (const part of tile.parts) if (!isNote(part)) free.blockBox(growBox(boxOnPage(view, part.box), -0.2));
  const cuts = cutEndsOf(routes, setting, free);
  const firstWires = placeWiresWords(routes, words, free, (id) => first.has(id));
  const partWords = placePartsWords(firstBefore(tile.parts, first), words, view, free);
  const wireWords = placeWiresWords(routes, words, free, (id) => !first.has(id));
  const said = [cuts, firstWires, partWords, wireWords];
  const shapes = tile.parts.flatMap((part) => part.strokes.map((stroke) => strokeInk(stroke, view)));
  const bottom = boxOnPage(view, tile.box).bottom;
  return {
    ink: [
      ...routes.flatMap(({ piece, route }) =>
        wireInk(
          route,
          piece.wire.hops.map((hop) => onPage(view, hop)),
          words.wireLook(piece.wire.id),
        ),
      ),
      ...setting.joints
        .filter(isInside(tile.box))
        .map((joint) => inkCircle(onPage(view, joint), JOINT_MM, { fill: "black" })),
      ...shapes,
      ...marks,
      ...lettering,
      ...said.flatMap(({ ink }) => ink),
    ],
    bottomMm: Math.max(bottom, ...said.map(({ bottomMm }) => bottomMm)),
    crowded: said.flatMap(({ crowded }) => crowded),
  };
}

/** A note is no more than its words, which may stand where it stands. */
function isNote({ lettering }: PartPicture): boolean {
  return lettering[0]?.role === "note";
}

function firstBefore(parts: readonly PartPicture[], first: ReadonlySet<string>): PartPicture[] {
  return [...parts.filter(({ id }) => first.has(id)), ...parts.filter(({ id }) => !first.has(id))];
}

function terminalMarks(tile: Tile, words: DrawingWords, view: View, free: Clearings): string[] {
  return tile.parts.flatMap((part) =>
    part.terminals.flatMap(({ address, at }) => {
      const mark = words.terminalMark(address);
      if (mark === null) return [];
      const [x, y] = onPage(view, at);
      free.blockBox(
        growBox({ left: x, top: y, right: x, bottom: y }, MARK_REACH_MM[mark === "bare" ? "bare" : "mark"]),
      );
      return terminalMarkInk([x, y], mark);
    }),
  );
}

/** Lettering that belongs to the symbol: on it, and the markings at its terminals. */
function symbolLettering(part: PartPicture, view: View, free: Clearings): string[] {
  for (const [a, b] of outlineOf(part)) free.blockLine(onPage(view, a), onPage(view, b), HALF_STROKE_MM);
  const strokes = part.strokes.flatMap((stroke): TextBlock[] =>
    stroke.shape === "text"
      ? [{ lines: [stroke.text], at: onPage(view, stroke.centre), anchor: stroke.anchor ?? "middle" }]
      : [],
  );
  const printed = new Set(strokes.map(({ lines }) => plainMinus(lines[0]!)));
  const markings = part.lettering
    .filter(({ role, text }) => role === "terminal" && !printed.has(plainMinus(text)))
    .map((each) => blockOf([each], view));
  return [...strokes, ...markings].flatMap((block) => blockInk(placeMark(block, free)));
}

/** The level and upright lines of a symbol. */
function outlineOf({ strokes }: PartPicture): (readonly [Point, Point])[] {
  return strokes.flatMap((stroke) => {
    if (stroke.shape !== "line") return [];
    const points = stroke.closed ? [...stroke.points, stroke.points[0]!] : stroke.points;
    return points
      .slice(1)
      .map((to, at) => [points[at]!, to] as const)
      .filter(([a, b]) => a[0] === b[0] || a[1] === b[1]);
  });
}

interface PieceOnPage {
  readonly piece: WirePiece;
  /** Millimetres. */
  readonly route: readonly Point[];
}

interface Lettered {
  readonly ink: string[];
  readonly crowded: string[];
  bottomMm: number;
}

function nothingYet(): Lettered {
  return { ink: [], crowded: [], bottomMm: 0 };
}

function settleInto(lettered: Lettered, placed: PlacedLettering | null): void {
  if (!placed) return;
  lettered.ink.push(...placedInk(placed));
  lettered.bottomMm = Math.max(lettered.bottomMm, ...placed.blocks.map((block) => blockBox(block).bottom));
}

function placePartsWords(parts: readonly PartPicture[], words: DrawingWords, view: View, free: Clearings): Lettered {
  const lettered = nothingYet();
  for (const part of parts) {
    const said = part.lettering
      .filter(({ role }) => role === "name" || role === "caption" || role === "note")
      .map((each) => (each.role === "name" ? { ...each, text: words.partName(part.id) } : each));
    if (said.length === 0) continue;
    const box = boxOnPage(view, part.box);
    const full = placePartWords(blockOf(said, view), box, free);
    if (!full) lettered.crowded.push(part.id);
    settleInto(lettered, full ?? placePartWords(blockOf(said.slice(0, 1), view), box, free));
  }
  return lettered;
}

/**
 * Short wires choose first: they have the fewest places. Of a wire that runs off the page and comes back, the longest piece
 * says everything, the others only whose they are.
 */
function placeWiresWords(
  routes: readonly PieceOnPage[],
  words: DrawingWords,
  free: Clearings,
  isMeant: (id: string) => boolean,
): Lettered {
  const lettered = nothingYet();
  const own = ownRuns(routes.map(({ route }) => route));
  const pieces = routes.map(({ piece, route }, at) => ({
    id: piece.wire.id,
    runs: own[at]!,
    lengthMm: routeLength(route),
  }));
  const longest = new Map<string, number>();
  for (const { id, lengthMm } of pieces) longest.set(id, Math.max(lengthMm, longest.get(id) ?? 0));
  const meant = pieces.filter(({ id }) => isMeant(id));
  for (const { id, runs, lengthMm } of meant.sort((a, b) => a.lengthMm - b.lengthMm)) {
    const isMain = lengthMm === longest.get(id);
    const full = isMain ? placeWireWords(words.wireWords(id), runs, free) : null;
    if (isMain && !full) lettered.crowded.push(id);
    settleInto(lettered, full ?? placeWireWords({ line: id, over: id, under: "" }, runs, free));
  }
  return lettered;
}

/** An arrow and "page 2" where a wire runs off this page. */
function cutEndsOf(routes: readonly PieceOnPage[], setting: PageSetting, free: Clearings): Lettered {
  const lettered = nothingYet();
  for (const { piece, route } of routes) {
    for (const end of ["start", "end"] as const) {
      if (!piece.cuts[end]) continue;
      const [tip, before] = end === "start" ? [route[0]!, route[1]!] : [route.at(-1)!, route.at(-2)!];
      const [dx, dy] = [Math.sign(tip[0] - before[0]), Math.sign(tip[1] - before[1])];
      const wing = (side: number): Point => [tip[0] - 2.4 * dx + side * dy * 1.2, tip[1] - 2.4 * dy + side * dx * 1.2];
      lettered.ink.push(inkLine([wing(1), tip, wing(-1)], { widthMm: RULE_MM.thick }));
      const label: TextBlock = {
        lines: [setting.continues(piece, end)],
        at: [tip[0] - 4 * dx, tip[1] - 4 * dy - 2.8],
        anchor: dx > 0 ? "end" : "start",
      };
      settleInto(
        lettered,
        placePartWords(label, growBox({ left: tip[0], right: tip[0], top: tip[1], bottom: tip[1] }, 1.3), free),
      );
    }
  }
  return lettered;
}

/** The pieces of lettering as one block, set where the first of them stands. */
function blockOf(said: readonly Lettering[], view: View): TextBlock {
  const [first] = said;
  return {
    lines: said.map(({ text }) => fitText(text, SMALLEST_MM, LONGEST_NAME_MM)),
    at: onPage(view, first!.at),
    anchor: first!.anchor,
  };
}

function plainMinus(text: string): string {
  return text.replace("\u2212", "-");
}

function isInside(box: Box): (point: Point) => boolean {
  return ([x, y]) => x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;
}
