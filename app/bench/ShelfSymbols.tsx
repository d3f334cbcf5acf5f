import { useRef, type PointerEvent } from "react";
import { useApp } from "../app-context.tsx";
import { SymbolPicture } from "../panels/SymbolPicture.tsx";
import { walkShelf } from "../panels/walk-shelf.ts";
import { viewOf } from "../store/part-view.ts";
import { placeSymbol } from "./plans.ts";
import { partOf, type BenchSymbol } from "./symbol.ts";
import { useFoundSymbols, useKeptSymbols } from "./use-bench.ts";

/** Pixels a pointer moves before a press becomes a drag. */
const DRAG_FROM = 6;
const MOST = { width: 62, height: 46 };

/** The person's own symbols on the Shelf, and the way to the Bench: first once there are some, last before. */
export function ShelfSymbols({ sought, end }: { readonly sought: string; readonly end: "first" | "last" }) {
  const { editor, symbols } = useApp();
  const hasSome = useKeptSymbols().length > 0;
  const found = useFoundSymbols(sought);
  if ((end === "first") !== hasSome || (found.length === 0 && sought !== "")) return null;
  const openBench = () => {
    symbols.want({ from: "new" });
    editor.show("bench");
  };
  return (
    <section className="shelf-group" aria-label="My symbols">
      <h3 className="shelf-group-title">My symbols</h3>
      <ul className="shelf-items">
        {found.map(({ id, symbol }) => (
          <li key={id}>
            <ShelfSymbol symbol={symbol} />
          </li>
        ))}
        <li>
          <button
            type="button"
            className="shelf-item"
            title="Draw a symbol of your own"
            tabIndex={-1}
            onKeyDown={walkShelf}
            onClick={openBench}
          >
            <span className="shelf-picture shelf-bench" aria-hidden="true">
              +
            </span>
            <span className="shelf-name">Bench</span>
          </button>
        </li>
      </ul>
    </section>
  );
}

/** A tap or Enter puts it down on a free spot; a drag carries it to the Board. */
function ShelfSymbol({ symbol }: { readonly symbol: BenchSymbol }) {
  const { editor, runner } = useApp();
  const pressed = useRef<{ x: number; y: number } | null>(null);
  const dragged = useRef(false);
  const part = partOf(symbol, "own");
  const take = () => {
    runner.carryOut(placeSymbol(editor.state, symbol));
    if (editor.state.place === "shelf") editor.show(null);
  };
  const startDrag = (event: PointerEvent<HTMLButtonElement>) => {
    const from = pressed.current;
    if (from === null || Math.hypot(event.clientX - from.x, event.clientY - from.y) < DRAG_FROM) return;
    pressed.current = null;
    dragged.current = true;
    event.currentTarget.releasePointerCapture(event.pointerId);
    const { id: _id, ...rest } = part;
    editor.set({ placing: { part: rest, dragged: true }, tool: "place", place: null });
  };
  return (
    <button
      type="button"
      className="shelf-item"
      title={`${symbol.name}: a symbol of your own`}
      tabIndex={-1}
      onKeyDown={walkShelf}
      onPointerDown={(event) => {
        dragged.current = false;
        if (event.pointerType === "touch") return;
        pressed.current = { x: event.clientX, y: event.clientY };
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={startDrag}
      onPointerUp={() => (pressed.current = null)}
      onClick={() => {
        if (!dragged.current) take();
      }}
    >
      <span className="shelf-picture">
        <SymbolPicture view={viewOf(part)} scale={10} most={MOST} />
      </span>
      <span className="shelf-name">{symbol.name || "Own symbol"}</span>
    </button>
  );
}
