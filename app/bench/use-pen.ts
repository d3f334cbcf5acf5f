import { useRef, useState, type KeyboardEvent, type PointerEvent, type RefObject } from "react";
import type { Point } from "../../core/geometry/index.ts";
import { finish, pieceAt, press, stepOf, takePen, without, type Hand, type Turn } from "./drawing-hand.ts";
import { strokeWords, tidy } from "./strokes.ts";
import type { BenchSymbol } from "./symbol.ts";

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
/** Steps an arrow key goes with Shift. */
const STRIDE = 5;

interface Given {
  readonly svg: RefObject<SVGSVGElement | null>;
  readonly symbol: BenchSymbol;
  readonly hand: Hand;
  readonly onTurn: (turn: Turn) => void;
  readonly onSay: (text: string) => void;
}

/** The crosshair, and what moves and presses it: a pointer, or the arrow keys and Enter. */
export function usePen(given: Given) {
  const { svg, hand } = given;
  const [cross, setCross] = useState<Point>([0, 0]);
  const [isPointing, setPointing] = useState(false);
  const spotOf = (event: PointerEvent): Point => {
    const matrix = svg.current!.getScreenCTM()!.inverse();
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    return hand.pen === "erase" ? [x, y] : snapped([x, y], stepOf(hand.pen));
  };
  const point = (event: PointerEvent) => {
    setPointing(true);
    setCross(spotOf(event));
  };
  return {
    cross,
    isPointing,
    handlers: {
      tabIndex: 0,
      ...usePresses(given, spotOf, point),
      onPointerMove: point,
      onPointerLeave: () => setPointing(false),
      onKeyDown: (event: KeyboardEvent) =>
        onKey(event, given, cross, (at) => {
          setPointing(false);
          setCross(at);
        }),
    },
  };
}

/** A press sets a spot; let go elsewhere, that is the next spot. */
function usePresses(
  { svg, symbol, hand, onTurn }: Given,
  spotOf: (event: PointerEvent) => Point,
  point: (event: PointerEvent) => void,
) {
  const pressed = useRef<Point | null>(null);
  return {
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0) return;
      svg.current!.setPointerCapture(event.pointerId);
      pressed.current = spotOf(event);
      point(event);
      onTurn(press(hand, symbol, pressed.current));
    },
    onPointerUp: (event: PointerEvent) => {
      const from = pressed.current;
      pressed.current = null;
      const at = spotOf(event);
      if (from === null || Math.hypot(at[0] - from[0], at[1] - from[1]) < stepOf(hand.pen)) return;
      if (hand.pen === "line" && hand.points.length === 1) {
        const turn = press(hand, symbol, at);
        onTurn(finish(turn.hand, turn.symbol));
      } else if (hand.held !== null || hand.points.length > 0) onTurn(press(hand, symbol, at));
    },
  };
}

function onKey(
  event: KeyboardEvent,
  { symbol, hand, onTurn, onSay }: Given,
  cross: Point,
  setCross: (at: Point) => void,
): void {
  const step = stepOf(hand.pen);
  const [x, y] = snapped(cross, step);
  const way = ARROWS[event.key];
  if (way !== undefined && !event.altKey) {
    event.preventDefault();
    const stride = step * (event.shiftKey ? STRIDE : 1);
    const at: Point = [within(x + way[0] * stride), within(y + way[1] * stride)];
    setCross(at);
    onSay(`${at[0]}, ${at[1]}${underWords(symbol, at)}`);
  } else if (event.key === "Enter" || event.key === " ") {
    event.preventDefault();
    setCross([x, y]);
    onTurn(press(hand, symbol, [x, y]));
  } else if ((event.key === "Delete" || event.key === "Backspace") && hand.chosen !== null) {
    event.preventDefault();
    onTurn({ hand: takePen(hand.pen), symbol: without(symbol, hand.chosen), say: "Removed" });
  } else if (event.key === "Escape" && (hand.points.length > 0 || hand.held !== null || hand.chosen !== null)) {
    event.preventDefault();
    event.stopPropagation();
    onTurn({ hand: takePen(hand.pen), symbol });
  }
}

function snapped([x, y]: Point, step: number): Point {
  return [within(Math.round(x / step) * step), within(Math.round(y / step) * step)];
}

function within(value: number): number {
  return Math.min(50, Math.max(-50, tidy(value)));
}

function underWords(symbol: BenchSymbol, at: Point): string {
  const piece = pieceAt(symbol, at);
  if (piece === null) return "";
  return piece.piece === "terminal"
    ? `, on terminal ${symbol.terminals[piece.index]!.name}`
    : `, on ${strokeWords(symbol.drawing[piece.index]!)}`;
}
