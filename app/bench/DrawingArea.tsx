import { useRef } from "react";
import type { Point } from "../../core/geometry/index.ts";
import { finish, nudge, previewOf, takePen, type Hand, type Turn } from "./drawing-hand.ts";
import { Drawn } from "./Drawn.tsx";
import { extentOf } from "./extent.ts";
import { penHow } from "./PenRack.tsx";
import { tidy } from "./strokes.ts";
import type { BenchSymbol } from "./symbol.ts";
import { usePen } from "./use-pen.ts";
import { WriteText } from "./WriteText.tsx";

interface Props {
  readonly symbol: BenchSymbol;
  readonly hand: Hand;
  readonly onTurn: (turn: Turn) => void;
  readonly onSay: (text: string) => void;
}

/** The grid on which the symbol is drawn: by mouse, by finger, or with the arrow keys and Enter. */
export function DrawingArea({ symbol, hand, onTurn, onSay }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const { cross, isPointing, handlers } = usePen({ svg, symbol, hand, onTurn, onSay });
  const extent = extentOf(symbol);
  return (
    <div className="bench-area">
      <svg
        ref={svg}
        className="bench-sheet"
        role="application"
        aria-label="Drawing area"
        aria-describedby="bench-how"
        viewBox={`${extent.left} ${extent.top} ${extent.right - extent.left} ${extent.bottom - extent.top}`}
        {...handlers}
      >
        <Drawn
          symbol={hand.held === null ? symbol : nudge(symbol, hand.held.what, between(hand.held.from, cross))}
          hand={hand}
          extent={extent}
          preview={previewOf(hand, cross)}
          cross={cross}
          isPointing={isPointing}
        />
      </svg>
      <p className="bench-how" id="bench-how">
        {penHow(hand.pen)}
        <span className="unseen"> By keys: arrows move the crosshair, Enter presses, Escape lets go.</span>
      </p>
      <p className="bench-spot" aria-hidden="true">
        {tidy(cross[0])}, {tidy(cross[1])}
      </p>
      {(hand.points.length > 0 || hand.held !== null) && (
        <p className="bench-pending">
          {hand.points.length > 1 && hand.pen === "line" && (
            <button type="button" className="primary" onClick={() => onTurn(finish(hand, symbol))}>
              End the line
            </button>
          )}
          <button type="button" onClick={() => onTurn({ hand: takePen(hand.pen), symbol })}>
            Let go
          </button>
        </p>
      )}
      {hand.writeAt !== null && (
        <WriteText hand={hand} symbol={symbol} onTurn={onTurn} onDone={() => svg.current?.focus()} />
      )}
    </div>
  );
}

function between([fromX, fromY]: Point, [x, y]: Point): Point {
  return [x - fromX, y - fromY];
}
