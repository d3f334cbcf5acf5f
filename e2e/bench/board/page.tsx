import { createRoot } from "react-dom/client";
import { Board } from "../../../app/board/Board.tsx";
import type { BoardController, BoardSnapshot } from "../../../app/board/board-controller.ts";
import { NO_OVERLAY } from "../../../app/board/board-overlay.ts";
import type { Frame } from "../../../app/board/paint/frame.ts";
import { readPalette } from "../../../app/board/palette.ts";
import { viewOfAll } from "../../../app/board/zoom.ts";
import { applyEdits, type Document } from "../../../core/document/index.ts";
import { type Picture, pictureOf } from "../../../core/picture/index.ts";
import { bigDrawing, someMarks } from "./big-drawing.ts";
import { type Act, ACTS, framesOf, fullRedraw, tilePainter, type Way } from "./ways.ts";

const SIZE = { width: 1600, height: 900 };

/** Milliseconds of each frame, painting and rasterising on the main thread. */
export interface Timing {
  readonly act: Act | "first paint" | "crispening";
  readonly way: "full redraw" | "tiles";
  readonly frames: readonly number[];
}

const api = { measure, mountBoard, panBoard };
declare global {
  interface Window {
    readonly bench: typeof api;
  }
}
Object.assign(window, { bench: api });

/** Every act in both ways, in turns, on the same canvas size. */
async function measure(count: number, frames: number): Promise<Timing[]> {
  const document_ = bigDrawing(count);
  const picture = pictureOf(document_);
  const rest = restFrame(document_, picture);
  const timings: Timing[] = [];
  const ways = [
    ["full redraw", fullRedraw],
    ["tiles", tilePainter],
  ] as const;
  for (const [name, make] of ways)
    timings.push({ act: "first paint", way: name, frames: await firstPaints(make, rest) });
  for (const act of ACTS) {
    for (const [name, make] of ways)
      timings.push({ act, way: name, frames: await timed(make(), framesOf(act, rest, document_, frames), rest) });
  }
  timings.push({ act: "crispening", way: "tiles", frames: await crispening(rest) });
  return timings;
}

function restFrame(document_: Document, picture: Picture): Frame {
  return {
    picture,
    revision: 1,
    marks: someMarks(document_, 1, 0),
    view: viewOfAll(picture.box, SIZE),
    ...SIZE,
    pixelRatio: 1,
    palette: readPalette(getComputedStyle(document.documentElement)),
    lettering: true,
    selection: new Set(),
    spotlight: [],
    leads: [],
    overlay: NO_OVERLAY,
  };
}

async function firstPaints(make: () => Way, rest: Frame): Promise<number[]> {
  const times: number[] = [];
  for (let i = 0; i < 5; i++) {
    const context = newCanvas();
    const way = make();
    await nextFrame();
    times.push(timeOf(way, context, rest));
  }
  return times;
}

async function timed(way: Way, frames: Iterable<Frame>, rest: Frame): Promise<number[]> {
  const context = newCanvas();
  for (let i = 0; i < 60; i++) {
    await nextFrame();
    if (!way(context, rest) && i > 2) break;
  }
  const times: number[] = [];
  for (const frame of frames) {
    await nextFrame();
    times.push(timeOf(way, context, frame));
  }
  return times;
}

/** After a zoom: the frames in which tiles are made crisp. */
async function crispening(rest: Frame): Promise<number[]> {
  const context = newCanvas();
  const way = tilePainter();
  way(context, rest);
  const nearer = { ...rest, view: { ...rest.view, scale: rest.view.scale * 1.3 } };
  way(context, nearer);
  const times: number[] = [];
  for (let i = 0; i < 40; i++) {
    await nextFrame();
    const start = performance.now();
    const isMore = way(context, nearer);
    context.getImageData(0, 0, 1, 1);
    times.push(performance.now() - start);
    if (!isMore) break;
  }
  return times;
}

/** Reading a pixel makes the browser carry out all it was told to draw: the bench does it to see the whole cost, the app never does. */
function timeOf(way: Way, context: CanvasRenderingContext2D, frame: Frame): number {
  const start = performance.now();
  way(context, frame);
  context.getImageData(0, 0, 1, 1);
  return performance.now() - start;
}

function newCanvas(): CanvasRenderingContext2D {
  const canvas = document.createElement("canvas");
  canvas.width = SIZE.width;
  canvas.height = SIZE.height;
  document.getElementById("root")!.replaceChildren(canvas);
  return canvas.getContext("2d")!;
}

function nextFrame(): Promise<number> {
  return new Promise((resolve) => requestAnimationFrame(resolve));
}

let changeBoard: ((part: Partial<BoardSnapshot>) => void) | null = null;

/**
 * Milliseconds of each frame while the mounted Board is panned the way the bench pans its bare painter: what the app, React and
 * Konva add is in it.
 */
async function panBoard(count: number, frames: number): Promise<number[]> {
  const document_ = bigDrawing(count);
  const rest = restFrame(document_, pictureOf(document_));
  const canvas = document.querySelector<HTMLCanvasElement>(".board canvas")!;
  const context = canvas.getContext("2d")!;
  for (let i = 0; i < 60; i++) await nextFrame();
  const times: number[] = [];
  for (const { view } of framesOf("pan", rest, document_, frames)) {
    const start = performance.now();
    // Callbacks of one frame run in the order they were asked for: this one, then Konva's, then the last.
    const begun = nextFrame().then(() => performance.now());
    changeBoard!({ view });
    const told = performance.now() - start;
    const [from] = await Promise.all([begun, nextFrame()]);
    context.getImageData(0, 0, 1, 1);
    times.push(told + performance.now() - from);
  }
  return times;
}

/** The real Board with a drawing, for a real pointer. */
async function mountBoard(count: number): Promise<void> {
  const root = document.getElementById("root")!;
  root.replaceChildren();
  const first = bigDrawing(count);
  const picture = pictureOf(first);
  let snapshot: BoardSnapshot = {
    document: first,
    revision: 1,
    selection: new Set(),
    view: viewOfAll(picture.box, SIZE),
    marks: someMarks(first, 1, 0),
    theme: "light",
    tool: "select",
    placing: null,
    leads: [],
    reveal: null,
    lettering: true,
    spotlight: [],
  };
  const listeners = new Set<() => void>();
  const change = (part: Partial<BoardSnapshot>) => {
    snapshot = { ...snapshot, ...part };
    for (const listener of listeners) listener();
  };
  const controller: BoardController = {
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    getSnapshot: () => snapshot,
    dispatch: ({ edits }) =>
      change({ document: applyEdits(snapshot.document, edits), revision: snapshot.revision + 1 }),
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
  changeBoard = change;
  createRoot(root).render(<Board controller={controller} />);
  for (let i = 0; i < 30; i++) await nextFrame();
}
