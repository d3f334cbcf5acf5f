import { useRef, useState, type KeyboardEvent } from "react";
import { useApp, useDrawing, useEditor } from "../app-context.tsx";
import { useWords } from "../use-words.ts";
import { outlineItems, type OutlineItem } from "./outline-items.ts";

/** Of a large drawing only this many lines before and after the present one are in the page. */
const LINES_AROUND = 150;

/** The drawing as a list to walk with the arrow keys: the Board for keyboards and for those who hear the page. */
export function Outline() {
  const { editor } = useApp();
  const drawing = useDrawing();
  const words = useWords();
  const report = useEditor((state) => state.report);
  const present = useEditor((state) => state.present);
  const selection = useEditor((state) => state.selection);
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const [at, setAt] = useState("");
  const tree = useRef<HTMLUListElement>(null);

  const items = outlineItems(drawing, opened, report, present);
  const index = Math.max(
    0,
    items.findIndex((item) => item.place === at),
  );
  const start = Math.max(0, index - LINES_AROUND);
  const shown = items.slice(start, index + LINES_AROUND);

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

  const onKeyDown = (event: KeyboardEvent) => {
    const item = items[index];
    if (item === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const act = actionFor(event.key, items, index);
    if (act === null) return;
    event.preventDefault();
    if (act === "open" || act === "close") return open(item.selects, act === "open");
    if (act === "wire") {
      editor.set({ wireFrom: item.level === 2 ? item.place : null });
      return editor.show("wire-to");
    }
    goTo(act);
  };

  return (
    <section className="outline" aria-label="Outline of the drawing">
      <h2 className="sleeve">Outline</h2>
      {items.length === 0 && <p className="quiet">The drawing is empty. Press S to add a part.</p>}
      <ul ref={tree} role="tree" aria-label="Parts, terminals and wires" className="outline-tree" onKeyDown={onKeyDown}>
        {shown.map((item, line) => (
          <li
            key={item.place}
            role="treeitem"
            aria-level={item.level}
            aria-setsize={items.length}
            aria-posinset={start + line + 1}
            aria-selected={item.level === 1 && selection.has(item.place)}
            aria-expanded={item.isOpen}
            tabIndex={start + line === index ? 0 : -1}
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

/** What an arrow key does on this line; `null`: nothing. Right opens a part, then goes in; left goes back to it, then closes. */
function actionFor(
  key: string,
  items: readonly OutlineItem[],
  index: number,
): OutlineItem | "open" | "close" | "wire" | null {
  const item = items[index]!;
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
