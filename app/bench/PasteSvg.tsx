import { useId, useState } from "react";
import { SymbolPicture } from "../panels/SymbolPicture.tsx";
import { MOST_STROKES } from "./drawing-hand.ts";
import { ownKind } from "./own-kind.ts";
import { svgToStrokes } from "./svg-to-strokes.ts";
import type { BenchSymbol } from "./symbol.ts";

interface Props {
  readonly symbol: BenchSymbol;
  /** `null`: nothing is taken. */
  readonly onDone: (symbol: BenchSymbol | null, words: string) => void;
}

const MOST = { width: 200, height: 140 };

/** An SVG as text or file, reduced to strokes: looked at first, then added to the drawing. */
export function PasteSvg({ symbol, onDone }: Props) {
  const id = useId();
  const [svg, setSvg] = useState("");
  const { strokes, leftOut } = svgToStrokes(svg);
  const settings = { terminals: [], drawing: strokes, elements: [], positions: [], momentary: false };
  const take = () =>
    onDone(
      { ...symbol, drawing: [...symbol.drawing, ...strokes].slice(0, MOST_STROKES) },
      `${strokes.length} strokes added`,
    );
  return (
    <div className="bench-paste">
      <div className="field">
        <label htmlFor={id}>Text of the SVG</label>
        <textarea
          id={id}
          rows={4}
          spellCheck={false}
          value={svg}
          data-first-focus
          onChange={(event) => setSvg(event.target.value)}
        />
      </div>
      <input
        type="file"
        accept=".svg,image/svg+xml"
        aria-label="SVG file"
        onChange={(event) => void event.target.files?.[0]?.text().then(setSvg)}
      />
      {strokes.length > 0 && (
        <span className="card-picture">
          <SymbolPicture view={{ kind: ownKind, settings, terminals: [] }} scale={14} most={MOST} />
        </span>
      )}
      <p className="quiet">
        {svg.trim() === ""
          ? "Only its lines, circles and short texts are taken; nothing in it is loaded or run."
          : strokes.length === 0
            ? "There is nothing in it to draw."
            : `${strokes.length} strokes. ${leftOut.length > 0 ? `Left out: ${leftOut.join(", ")}.` : ""}`}
      </p>
      <div className="row-buttons">
        <button type="button" className="primary" disabled={strokes.length === 0} onClick={take}>
          Add to the drawing
        </button>
        <button type="button" onClick={() => onDone(null, "")}>
          Leave it
        </button>
      </div>
    </div>
  );
}
