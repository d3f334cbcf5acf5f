import { useRef, useState, type KeyboardEvent } from "react";
import { useApp, useDrawing, useEditor } from "../app-context.tsx";
import { useWords } from "../use-words.ts";
import { outlineItems, type OutlineItem } from "./outline-items.ts";

/** Of a large drawing only this many lines before and after the present one are in the page. */
const LINES_AROUND = 150;

/** The drawing as a list to walk with the arrow keys: the Board for keyboards and for those who hear the page. */
export function Outline() {
  const drawing = useDrawing();
  const words = useWords();
  const report = useEditor((state) => state.report);
  const present = useEditor((state) => state.present);
  const selection = useEditor((state) => state.selection);
  const { at, opened, tree, goTo, open, act } = useWalk();

  const items = outlineItems(drawing, opened, report, present);
  const index = Math.max(
    0,
    items.findIndex((item) => item.place === at),
  );
  const start = Math.max(0, index - LINES_AROUND);
  const onKeyDown = (event: KeyboardEvent) => {
    // With Shift the arrows move the part itself.
    if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
    const move = moveFor(event.key, items, index);
    if (move === null) return;
    event.preventDefault();
    act(move, items[index]!);
  };

  return (
    <section className="outline" aria-label="Outline of the drawing">
      <h2 className="sleeve">Outline</h2>
      {items.length === 0 && <p className="quiet">The drawing is empty. Press S to add a part.</p>}
      <ul ref={tree} role="tree" aria-label="Parts, terminals and wires" className="outline-tree">
        {items.slice(start, index + LINES_AROUND).map((item, line) => (
          <li
            key={item.place}
            role="treeitem"
            aria-level={item.level}
            aria-setsize={items.length}
            aria-posinset={start + line + 1}
            aria-selected={item.level === 1 && selection.has(item.place)}
            aria-expanded={item.isOpen}
            tabIndex={start + line === index ? 0 : -1}
            onKeyDown={onKeyDown}
            onClick={() => goTo(item)}
            onDoubleClick={() => item.isOpen !== undefined && open(item.selects, !item.isOpen)}
          >
            {words(item.text)}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Which line the focus is on, which parts are opened, and what moving does to the drawing's selection. */
function useWalk() {
  const { editor } = useApp();
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const [at, setAt] = useState("");
  const tree = useRef<HTMLUListElement>(null);

  const goTo = (item: OutlineItem) => {
    setAt(item.place);
    editor.set({
      selection: new Set([item.selects]),
      spotlight: item.level === 2 ? [item.place] : [],
      reveal: { places: [item.place] },
    });
    requestAnimationFrame(() => tree.current?.querySelector<HTMLElement>('[tabindex="0"]')?.focus());
  };
  const open = (id: string, isOpen: boolean) =>
    setOpened(new Set(isOpen ? [...opened, id] : [...opened].filter((one) => one !== id)));
  const act = (move: Move, item: OutlineItem) => {
    if (move === "open" || move === "close") return open(item.selects, move === "open");
    if (move !== "wire") return goTo(move);
    editor.set({ wireFrom: item.level === 2 ? item.place : null });
    editor.show("wire-to");
  };
  return { at, opened, tree, goTo, open, act };
}

type Move = OutlineItem | "open" | "close" | "wire";

/** What a key does on this line; `null`: nothing. Right opens a part, then goes in; left goes back to it, then closes. */
function moveFor(key: string, items: readonly OutlineItem[], index: number): Move | null {
  const item = items[index];
  if (item === undefined) return null;
  switch (key) {
    case "ArrowDown":
      return items[index + 1] ?? null;
    case "ArrowUp":
      return items[index - 1] ?? null;
    case "Home":
      return items[0] ?? null;
    case "End":
      return items.at(-1) ?? null;
    case "ArrowRight":
      if (item.isOpen === undefined) return null;
      return item.isOpen ? (items[index + 1] ?? null) : "open";
    case "ArrowLeft":
      if (item.level === 2) return items.find((one) => one.place === item.selects) ?? null;
      return item.isOpen ? "close" : null;
    case "Enter":
    case " ":
      return item;
    case "w":
      return "wire";
    default:
      return null;
  }
}
