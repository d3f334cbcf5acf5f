import { describe, expect, it } from "vitest";
import type { BoardController, BoardSnapshot } from "../../../app/board/board-controller.ts";
import { BoardHost } from "../../../app/board/board-host.ts";
import { PALETTE_KEYS, type Palette } from "../../../app/board/palette.ts";
import { applyEdits, type Document, type Transaction } from "../../../core/document/index.ts";
import { recordingContext } from "./support/recording-context.ts";
import { lamp, point, sheet, wire } from "./support/sheets.ts";

const document = sheet([lamp("e1", 0, 0), lamp("e2", 20, 0)], [wire("w1", "e1.-", "e2.+")]);

/** An app that does what it is told and writes it down, and a page that counts the frames asked for. */
function standingBoard(first: Document = document) {
  let snapshot: BoardSnapshot = {
    document: first,
    revision: 1,
    selection: new Set(),
    view: { x: 0, y: 0, scale: 10 },
    marks: null,
    theme: "light",
    tool: "select",
    placing: null,
    leads: [],
    reveal: null,
    lettering: true,
    spotlight: [],
  };
  let tell = () => {};
  const change = (part: Partial<BoardSnapshot>) => {
    snapshot = { ...snapshot, ...part };
    tell();
  };
  const transactions: Transaction[] = [];
  const controller: BoardController = {
    subscribe: (listener) => {
      tell = listener;
      return () => {};
    },
    getSnapshot: () => snapshot,
    dispatch(transaction) {
      transactions.push(transaction);
      change({ document: applyEdits(snapshot.document, transaction.edits), revision: snapshot.revision + 1 });
    },
    select: (ids) => change({ selection: new Set(ids) }),
    setView: (view) => change({ view }),
    setSize: () => {},
    setTool: (tool) => change({ tool }),
    setPlacing: (placing) => change({ placing }),
    flick: () => {},
    release: () => {},
    openMenu: () => {},
    probe: () => {},
  };
  const asked = { frames: 0 };
  const palette = Object.fromEntries(PALETTE_KEYS.map((key) => [key, key])) as unknown as Palette;
  const host = new BoardHost(controller, {
    requestPaint: () => asked.frames++,
    setCursor: () => {},
    readPalette: () => palette,
    makeCanvas: () => ({ image: {} as CanvasImageSource, context: recordingContext().context }),
  });
  host.start();
  host.resize({ width: 800, height: 600 }, 1);
  const screen = recordingContext();
  const settle = () => {
    for (let i = 0; i < 40; i++) {
      asked.frames = 0;
      host.paint(screen.context);
      if (asked.frames === 0) return;
    }
  };
  settle();
  return { host, change, transactions, asked, screen, settle, now: () => snapshot };
}

describe("the Board's host", () => {
  it("comes to rest: nothing to do, no frame asked for", () => {
    const { asked, change, now } = standingBoard();
    change({ selection: now().selection, view: now().view });
    expect(asked.frames).toBe(0);
  });

  it("asks for a frame when something shown has changed", () => {
    for (const part of [
      { selection: new Set(["e1"]) },
      { view: { x: 5, y: 0, scale: 10 } },
      { lettering: false },
      { theme: "dark" as const },
    ]) {
      const { asked, change } = standingBoard();
      change(part);
      expect(asked.frames).toBeGreaterThan(0);
    }
  });

  it("leaves the document alone during a drag and changes it once at its end", () => {
    const { host, transactions, now } = standingBoard();
    host.handle(point("down", 2, 0));
    for (let i = 1; i <= 50; i++) {
      host.handle(point("move", 2 + i / 10, i / 10));
      expect(now().document).toBe(document);
    }
    host.handle(point("up", 7, 5));
    expect(transactions.map(({ label }) => label)).toEqual(["Move E1"]);
    expect(now().document.parts[0]!.at).toEqual([5, 5]);
  });

  it("paints once for each step of a drag, and only where it shows", () => {
    const { host, screen, settle } = standingBoard();
    host.handle(point("down", 2, 0));
    host.handle(point("move", 3, 1));
    settle();
    screen.clear();
    host.handle(point("move", 4, 1));
    host.paint(screen.context);
    const clips = screen.calls.filter((call) => call === "clip").length;
    expect(clips).toBeGreaterThan(0);
    expect(clips).toBeLessThan(10);
  });

  it("lets gestures find a part where it was put a moment ago, before the next frame", () => {
    const { host, change, now } = standingBoard();
    change({ document: applyEdits(document, [{ op: "set-part", id: "e2", change: { at: [20, 30] } }]), revision: 2 });
    host.handle(point("down", 22, 30));
    host.handle(point("up", 22, 30));
    expect([...now().selection]).toEqual(["e2"]);
  });

  it("forgets a gesture when another tool is taken in hand", () => {
    const { host, change, transactions } = standingBoard();
    host.handle(point("down", 2, 0));
    host.handle(point("move", 5, 5));
    change({ tool: "wire" });
    host.handle(point("up", 5, 5));
    expect(transactions).toEqual([]);
  });

  it("takes keys only while something is going on", () => {
    const { host } = standingBoard();
    expect(host.key("Escape")).toBe(false);
    host.handle(point("down", 2, 0));
    host.handle(point("move", 5, 5));
    expect(host.key("r")).toBe(false);
    expect(host.key("Escape")).toBe(true);
    expect(host.key("Escape")).toBe(false);
  });

  it("brings places asked for into view", () => {
    const far = sheet([lamp("e1", 0, 0), lamp("e2", 400, 300)]);
    const { change, now } = standingBoard(far);
    change({ reveal: { places: ["e2.+"] } });
    const { x, y, scale } = now().view;
    expect(400 * scale + x).toBeGreaterThan(0);
    expect(400 * scale + x).toBeLessThan(800);
    expect(300 * scale + y).toBeLessThan(600);
    change({ reveal: { places: [] } });
    expect(now().view.x).toBeGreaterThanOrEqual(0);
  });

  it("draws everything anew when the browser has taken its pixels away", () => {
    const { host, asked, settle, screen } = standingBoard();
    const frame = () => screen.calls.splice(0);
    frame();
    host.paint(screen.context);
    expect(frame()).toEqual([]);
    asked.frames = 0;
    host.redraw();
    expect(asked.frames).toBe(1);
    settle();
    expect(frame().length).toBeGreaterThan(0);
  });
});
