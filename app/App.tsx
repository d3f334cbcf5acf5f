import { lazy, Suspense, useEffect, useMemo } from "react";
import { useApp, useDrawing, useEditor } from "./app-context.tsx";
import { titleOf } from "./keeping/drawing-shelf.ts";
import { openFile } from "./outside.ts";
import { BoardMenu } from "./panels/BoardMenu.tsx";
import { BoardTools } from "./panels/BoardTools.tsx";
import { PANELS } from "./panels/index.ts";
import { Hints } from "./panels/Hints.tsx";
import { Instrument } from "./panels/instruments/Instrument.tsx";
import { LiveRegion } from "./panels/LiveRegion.tsx";
import { MiniMap } from "./panels/MiniMap.tsx";
import { Notices } from "./panels/Notices.tsx";
import { ThumbBar } from "./panels/ThumbBar.tsx";
import { TopBar } from "./panels/TopBar.tsx";
import { boardLink } from "./store/board-link.ts";
import { useIsSmall } from "./use-is-small.ts";
import { useKeys } from "./use-keys.ts";

// Asked for at once, but the places around it need not wait for the canvas library.
const board = import("./board/Board.tsx");
const Board = lazy(async () => ({ default: (await board).Board }));

/** The window: Board, Shelf, Card, Controls and Snags, and what opens over them. */
export function App() {
  const { editor } = useApp();
  const theme = useEditor((state) => state.theme);
  const title = titleOf(useDrawing());
  const controller = useMemo(() => boardLink(editor), [editor]);
  const isSmall = useIsSmall();
  useKeys();
  useFileDrop();
  useEffect(() => {
    document.documentElement.dataset["theme"] = theme;
    // The device's own bars take the colour of the page they border on, which need not be what the device prefers.
    const paper = getComputedStyle(document.documentElement).getPropertyValue("--paper").trim();
    for (const meta of document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')) meta.content = paper;
  }, [theme]);
  useEffect(() => {
    document.title = `${title} · Groundstrap`;
  }, [title]);
  return (
    <div className="app" data-small={isSmall || undefined}>
      <TopBar />
      <main className="places">
        {!isSmall && <PANELS.shelf.Panel />}
        <div className="board-place">
          <div className="board-top">
            <Hints />
            <BoardTools />
          </div>
          <PANELS.outline.Panel />
          <Suspense>
            <Board controller={controller} />
          </Suspense>
          <MiniMap />
          <Notices />
        </div>
        {isSmall ? <PANELS.controls.Panel /> : <Margin />}
      </main>
      <footer className="caution-line">
        For planning only: a plan is not an inspection. Follow the vehicle maker's instructions and local code; have
        licensed people do what the law gives to them.
      </footer>
      <OpenPlace isSmall={isSmall} />
      {isSmall && <SmallInstrument />}
      {isSmall && <ThumbBar />}
      <BoardMenu />
      <LiveRegion />
    </div>
  );
}

/** Beside and under the Board, where there is room. An instrument in hand takes the Card's place. */
function Margin() {
  const hasInstrument = useEditor((state) => state.instrument !== null);
  return (
    <>
      <PANELS.controls.Panel />
      <aside className="margin" aria-label="Snags and Card">
        <Instrument />
        <PANELS.snags.Panel />
        {!hasInstrument && <PANELS.card.Panel />}
      </aside>
    </>
  );
}

/** Under the Board, unless a place is open there. */
function SmallInstrument() {
  const isFree = useEditor((state) => state.instrument !== null && state.place === null);
  return isFree ? (
    <div className="sheet sheet-instrument">
      <Instrument />
    </div>
  ) : null;
}

/** The place or dialog that was asked for: over the page, or the focus on it where it stands. */
function OpenPlace({ isSmall }: { readonly isSmall: boolean }) {
  const { editor } = useApp();
  const place = useEditor((state) => state.place);
  const panel = place === null ? null : PANELS[place];
  const stands = panel?.shown === "place" && (!isSmall || place === "controls" || place === "outline");
  useEffect(() => {
    if (panel === null || !stands) return;
    document.querySelector<HTMLElement>(panel.selector ?? "")?.focus();
    editor.show(null);
  }, [editor, panel, stands]);
  if (panel === null || stands) return null;
  if (panel.shown === "dialog") {
    return (
      <Suspense>
        <panel.Panel />
      </Suspense>
    );
  }
  return (
    <section className="sheet" aria-label="The place opened">
      <button type="button" className="sheet-close" aria-label="Close" onClick={() => editor.show(null)}>
        <span aria-hidden="true" />
      </button>
      <panel.Panel />
    </section>
  );
}

/** A file let go of anywhere over the page is opened. */
function useFileDrop(): void {
  const { editor, keeper } = useApp();
  useEffect(() => {
    const onDragOver = (event: DragEvent) => event.preventDefault();
    const onDrop = (event: DragEvent) => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) void openFile(editor, keeper, file);
    };
    addEventListener("dragover", onDragOver);
    addEventListener("drop", onDrop);
    return () => {
      removeEventListener("dragover", onDragOver);
      removeEventListener("drop", onDrop);
    };
  }, [editor, keeper]);
}
