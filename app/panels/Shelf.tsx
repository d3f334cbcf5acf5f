import { useRef, useState, type PointerEvent } from "react";
import { findKinds, type PartKind } from "../../core/parts/index.ts";
import { useApp, useDrawing } from "../app-context.tsx";
import { placeSymbol } from "../bench/plans.ts";
import { ShelfSymbols } from "../bench/ShelfSymbols.tsx";
import { useFoundSymbols } from "../bench/use-bench.ts";
import { addPart, freshPart } from "../commands/add-commands.ts";
import { viewOf } from "../store/part-view.ts";
import { SymbolPicture } from "./SymbolPicture.tsx";
import { walkShelf } from "./walk-shelf.ts";

const SHELVES: readonly (readonly [PartKind["shelf"], string])[] = [
  ["sources", "Sources"],
  ["protection", "Protection"],
  ["switching", "Switching"],
  ["loads", "Loads"],
  ["grounds", "Grounds"],
  ["joints", "Joints"],
];

/** Parts to drop on the Board, by trade name or another word for it. */
export function Shelf() {
  const [sought, setSought] = useState("");
  const { editor, runner } = useApp();
  const found = findKinds(sought);
  const own = useFoundSymbols(sought);
  const take = (kind: PartKind) => {
    runner.carryOut(addPart(editor.state, kind));
    if (editor.state.place === "shelf") editor.show(null);
  };
  return (
    <section className="shelf" aria-label="Shelf">
      <h2 className="sleeve">Shelf</h2>
      <input
        className="shelf-search"
        type="search"
        aria-label="Find a part"
        placeholder="Find a part"
        data-first-focus
        value={sought}
        onChange={(event) => setSought(event.target.value)}
        onKeyDown={(event) => {
          if (event.key !== "Enter") return;
          if (found[0] !== undefined) take(found[0]);
          else if (own[0] !== undefined) runner.carryOut(placeSymbol(editor.state, own[0].symbol));
        }}
      />
      <div className="shelf-board">
        <ShelfSymbols sought={sought} end="first" />
        {SHELVES.map(([shelf, title]) => {
          const kinds = found.filter((kind) => kind.shelf === shelf);
          if (kinds.length === 0) return null;
          return (
            <section key={shelf} className="shelf-group" aria-label={title}>
              <h3 className="shelf-group-title">{title}</h3>
              <ul className="shelf-items">
                {kinds.map((kind) => (
                  <li key={kind.kind}>
                    <ShelfItem kind={kind} isStop={kind === found[0]} onTake={take} />
                  </li>
                ))}
              </ul>
            </section>
          );
        })}
        <ShelfSymbols sought={sought} end="last" />
        {found.length === 0 && own.length === 0 && (
          <p className="quiet">No part by that word. Try what it does: "fuse", "light", "earth", "join".</p>
        )}
      </div>
    </section>
  );
}

/** Pixels a pointer moves before a press becomes a drag. */
const DRAG_FROM = 6;
const MOST = { width: 62, height: 46 };

interface ItemProps {
  readonly kind: PartKind;
  /** Tab stops here; the arrow keys go on from it. */
  readonly isStop: boolean;
  readonly onTake: (kind: PartKind) => void;
}

/** A tap or Enter puts the part down on a free spot; a drag carries it to the Board. */
function ShelfItem({ kind, isStop, onTake }: ItemProps) {
  const { editor } = useApp();
  const drawing = useDrawing();
  const pressed = useRef<{ x: number; y: number } | null>(null);
  const dragged = useRef(false);
  const part = freshPart(drawing, kind);

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
      title={kind.about}
      tabIndex={isStop ? 0 : -1}
      onKeyDown={walkShelf}
      onPointerDown={(event) => {
        dragged.current = false;
        if (event.pointerType === "touch") return;
        pressed.current = { x: event.clientX, y: event.clientY };
        // A quick hand is off the button before it is heard to move.
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={startDrag}
      onPointerUp={() => (pressed.current = null)}
      onClick={() => {
        if (!dragged.current) onTake(kind);
      }}
    >
      <span className="shelf-picture">
        <SymbolPicture view={viewOf(part)} scale={10} most={MOST} />
      </span>
      <span className="shelf-name">{kind.title}</span>
    </button>
  );
}
