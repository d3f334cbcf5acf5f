import type { Box, Point, Stroke } from "../../core/geometry/index.ts";
import { StrokeShape } from "../panels/StrokeShape.tsx";
import type { Hand } from "./drawing-hand.ts";
import type { BenchSymbol, BenchTerminal } from "./symbol.ts";

interface Props {
  readonly symbol: BenchSymbol;
  readonly hand: Hand;
  readonly extent: Box;
  readonly preview: Stroke | null;
  readonly cross: Point;
  readonly isPointing: boolean;
}

const OUT: Readonly<Record<BenchTerminal["exit"], Point>> = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] };

/** The area is seldom of the extent's own proportions: the grid goes on at its sides. */
const BEYOND = 60;

/** Grid, strokes, terminals and the crosshair. */
export function Drawn({ symbol, hand, extent, preview, cross, isPointing }: Props) {
  const { left, top, right, bottom } = extent;
  const isChosen = (piece: "stroke" | "terminal", index: number) =>
    hand.chosen?.piece === piece && hand.chosen.index === index;
  return (
    <>
      <defs>
        <pattern id="bench-grid" width="1" height="1" x="-0.5" y="-0.5" patternUnits="userSpaceOnUse">
          <circle className="bench-dot" cx="0.5" cy="0.5" r="0.034" />
          <circle className="bench-dot-half" cx="0" cy="0.5" r="0.02" />
          <circle className="bench-dot-half" cx="0.5" cy="0" r="0.02" />
        </pattern>
      </defs>
      <rect
        x={left - BEYOND}
        y={top - BEYOND}
        width={right - left + 2 * BEYOND}
        height={bottom - top + 2 * BEYOND}
        fill="url(#bench-grid)"
      />
      <path className="bench-origin" d="M-0.5 0h1M0-0.5v1" />
      <g className="symbol bench-strokes">
        {symbol.drawing.map((stroke, index) => (
          <g key={index} data-chosen={isChosen("stroke", index) || undefined}>
            <StrokeShape stroke={stroke} />
          </g>
        ))}
      </g>
      {symbol.terminals.map((terminal, index) => (
        <TerminalShape key={index} terminal={terminal} isChosen={isChosen("terminal", index)} />
      ))}
      {preview !== null && (
        <g className="symbol bench-preview">
          <StrokeShape stroke={preview} />
        </g>
      )}
      <g
        className="bench-cross"
        data-pointing={isPointing || undefined}
        transform={`translate(${cross[0]} ${cross[1]})`}
      >
        <path d="M-0.7 0h1.4M0-0.7v1.4" />
        <circle r="0.28" />
      </g>
    </>
  );
}

function TerminalShape({ terminal, isChosen }: { readonly terminal: BenchTerminal; readonly isChosen: boolean }) {
  const [x, y] = terminal.at;
  const [outX, outY] = OUT[terminal.exit];
  const [nameX, nameY] = outX === 0 ? [x + 0.4, y + outY * 0.75 + 0.2] : [x + outX * 0.9, y - 0.35];
  return (
    <g className="bench-terminal" data-chosen={isChosen || undefined}>
      <path d={`M${x} ${y}l${outX * 0.9} ${outY * 0.9}`} />
      <circle cx={x} cy={y} r="0.2" />
      <text x={nameX} y={nameY} fontSize="0.55" textAnchor={outX === 0 ? "start" : "middle"}>
        {terminal.name}
      </text>
    </g>
  );
}
