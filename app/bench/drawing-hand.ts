import type { Point, Stroke } from "../../core/geometry/index.ts";
import { arcThrough, boxBetween, circleThrough, distanceToStroke, moved, tidy } from "./strokes.ts";
import type { BenchSymbol, BenchTerminal } from "./symbol.ts";

export type Pen = "move" | "line" | "box" | "circle" | "arc" | "text" | "terminal" | "erase";

/** A stroke by its number, or a terminal by its. */
export type Piece = { readonly piece: "stroke" | "terminal"; readonly index: number };

/** What the hand at the drawing area is in the middle of. */
export interface Hand {
  readonly pen: Pen;
  /** Spots set so far of a stroke that needs more. */
  readonly points: readonly Point[];
  /** Taken up and not yet put down, and from where. */
  readonly held: { readonly what: Piece; readonly from: Point } | null;
  readonly chosen: Piece | null;
  /** A text is to be written here. */
  readonly writeAt: Point | null;
}

export interface Turn {
  readonly hand: Hand;
  readonly symbol: BenchSymbol;
  readonly say?: string;
}

export const MOST_STROKES = 400;
const MOST_TERMINALS = 64;
const MOST_POINTS = 200;
/** How near is on it, grid steps. */
const REACH = 0.6;

export function takePen(pen: Pen): Hand {
  return { pen, points: [], held: null, chosen: null, writeAt: null };
}

/** A pen's own raster: terminals stand on whole steps, strokes on halves. */
export function stepOf(pen: Pen): number {
  return pen === "terminal" ? 1 : 0.5;
}

/** One press of the pen at a spot of the grid. */
export function press(hand: Hand, symbol: BenchSymbol, at: Point): Turn {
  switch (hand.pen) {
    case "move":
      return hand.held === null ? takeUp(hand, symbol, at) : putDown(hand, symbol, at);
    case "erase":
      return erase(hand, symbol, at);
    case "terminal":
      return setTerminal(hand, symbol, at);
    case "text":
      return { hand: { ...hand, writeAt: at }, symbol };
    case "line":
      return extendLine(hand, symbol, at);
    case "box":
    case "circle":
    case "arc": {
      const points = [...hand.points, at];
      const needed = hand.pen === "arc" ? 3 : 2;
      if (points.length < needed) return { hand: { ...hand, points }, symbol };
      return draw({ ...hand, points: [] }, symbol, shapeOf(hand.pen, points));
    }
  }
}

/** Ends a line where it stands; with nothing begun it changes nothing. */
export function finish(hand: Hand, symbol: BenchSymbol): Turn {
  const rest = { ...hand, points: [] };
  if (hand.pen !== "line" || hand.points.length < 2) return { hand: rest, symbol };
  return draw(rest, symbol, { shape: "line", points: hand.points });
}

/** What would be drawn if the pen were pressed here. */
export function previewOf(hand: Hand, at: Point): Stroke | null {
  const points = [...hand.points, at];
  if (hand.points.length === 0) return null;
  if (hand.pen === "line" || points.length < (hand.pen === "arc" ? 3 : 2)) return { shape: "line", points };
  return shapeOf(hand.pen, points);
}

/** The text typed at the spot it was asked for. */
export function write(hand: Hand, symbol: BenchSymbol, text: string, size: number): Turn {
  const rest = { ...hand, writeAt: null };
  if (hand.writeAt === null || text.trim() === "") return { hand: rest, symbol };
  return draw(rest, symbol, { shape: "text", centre: hand.writeAt, text: text.trim().slice(0, 24), size });
}

/** The chosen piece moved by so much. */
export function nudge(symbol: BenchSymbol, { piece, index }: Piece, by: Point): BenchSymbol {
  if (piece === "stroke")
    return { ...symbol, drawing: symbol.drawing.map((one, at) => (at === index ? moved(one, by) : one)) };
  const shift = (terminal: BenchTerminal): BenchTerminal => ({
    ...terminal,
    at: [within(Math.round(terminal.at[0] + by[0])), within(Math.round(terminal.at[1] + by[1]))],
  });
  return { ...symbol, terminals: symbol.terminals.map((one, at) => (at === index ? shift(one) : one)) };
}

/** Takes the piece away. Elements inside that ended on a terminal are left with an end to say. */
export function without(symbol: BenchSymbol, { piece, index }: Piece): BenchSymbol {
  if (piece === "stroke") return { ...symbol, drawing: symbol.drawing.filter((_, at) => at !== index) };
  return { ...symbol, terminals: symbol.terminals.filter((_, at) => at !== index) };
}

/** Terminals lie above strokes. */
export function pieceAt(symbol: BenchSymbol, at: Point): Piece | null {
  const terminal = symbol.terminals.findIndex((one) => Math.hypot(one.at[0] - at[0], one.at[1] - at[1]) <= REACH);
  if (terminal >= 0) return { piece: "terminal", index: terminal };
  const distances = symbol.drawing.map((stroke) => distanceToStroke(stroke, at));
  const least = Math.min(...distances, Infinity);
  return least > REACH ? null : { piece: "stroke", index: distances.lastIndexOf(least) };
}

function shapeOf(pen: Pen, points: readonly Point[]): Stroke | null {
  const [a, b, c] = points as [Point, Point, Point];
  if (pen === "box") return boxBetween(a, b);
  return pen === "circle" ? circleThrough(a, b) : arcThrough(a, b, c);
}

function extendLine(hand: Hand, symbol: BenchSymbol, at: Point): Turn {
  const { points } = hand;
  const last = points.at(-1);
  const first = points[0];
  if (last !== undefined && isSame(last, at)) return finish(hand, symbol);
  if (first !== undefined && points.length >= 3 && isSame(first, at))
    return draw({ ...hand, points: [] }, symbol, { shape: "line", points, closed: true });
  const next = { ...hand, points: [...points, at] };
  return next.points.length >= MOST_POINTS ? finish(next, symbol) : { hand: next, symbol };
}

function draw(hand: Hand, symbol: BenchSymbol, stroke: Stroke | null): Turn {
  if (stroke === null) return { hand, symbol, say: "Too small to draw" };
  if (symbol.drawing.length >= MOST_STROKES) return { hand, symbol, say: `A symbol holds ${MOST_STROKES} strokes` };
  return {
    hand: { ...hand, chosen: { piece: "stroke", index: symbol.drawing.length } },
    symbol: { ...symbol, drawing: [...symbol.drawing, stroke] },
    say: "Drawn",
  };
}

function takeUp(hand: Hand, symbol: BenchSymbol, at: Point): Turn {
  const what = pieceAt(symbol, at);
  if (what === null) return { hand: { ...hand, chosen: null }, symbol, say: "Nothing there" };
  return { hand: { ...hand, chosen: what, held: { what, from: at } }, symbol, say: "Taken up" };
}

function putDown(hand: Hand, symbol: BenchSymbol, at: Point): Turn {
  const { what, from } = hand.held!;
  const by: Point = [tidy(at[0] - from[0]), tidy(at[1] - from[1])];
  const rest = { ...hand, held: null };
  if (by[0] === 0 && by[1] === 0) return { hand: rest, symbol };
  return { hand: rest, symbol: nudge(symbol, what, by), say: "Put down" };
}

function erase(hand: Hand, symbol: BenchSymbol, at: Point): Turn {
  const what = pieceAt(symbol, at);
  if (what === null) return { hand, symbol, say: "Nothing there" };
  return { hand: { ...hand, chosen: null }, symbol: without(symbol, what), say: "Erased" };
}

function setTerminal(hand: Hand, symbol: BenchSymbol, at: Point): Turn {
  const there = symbol.terminals.findIndex((terminal) => isSame(terminal.at, at));
  if (there >= 0)
    return {
      hand: { ...hand, chosen: { piece: "terminal", index: there } },
      symbol,
      say: `Terminal ${symbol.terminals[there]!.name} is here`,
    };
  if (symbol.terminals.length >= MOST_TERMINALS)
    return { hand, symbol, say: `A symbol has up to ${MOST_TERMINALS} terminals` };
  const name = freeName(symbol.terminals);
  const terminal: BenchTerminal = { name, at: [within(at[0]), within(at[1])], exit: sideOf(symbol, at) };
  return {
    hand: { ...hand, chosen: { piece: "terminal", index: symbol.terminals.length } },
    symbol: { ...symbol, terminals: [...symbol.terminals, terminal] },
    say: `Terminal ${name}`,
  };
}

function freeName(terminals: readonly BenchTerminal[]): string {
  let number = terminals.length + 1;
  while (terminals.some(({ name }) => name === String(number))) number += 1;
  return String(number);
}

/** A wire leaves away from the middle of what is there already. */
function sideOf(symbol: BenchSymbol, [x, y]: Point): BenchTerminal["exit"] {
  const spots = [
    ...symbol.drawing.flatMap((stroke) => (stroke.shape === "line" ? stroke.points : [stroke.centre])),
    ...symbol.terminals.map(({ at }) => at),
  ];
  if (spots.length === 0) return "left";
  const middle = (axis: 0 | 1) => {
    const values = spots.map((spot) => spot[axis]);
    return (Math.min(...values) + Math.max(...values)) / 2;
  };
  const [dx, dy] = [x - middle(0), y - middle(1)];
  if (Math.abs(dx) >= Math.abs(dy)) return dx > 0 ? "right" : "left";
  return dy > 0 ? "down" : "up";
}

function within(value: number): number {
  return Math.min(50, Math.max(-50, value));
}

function isSame(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}
