import type { Layer as KonvaLayer } from "konva/lib/Layer";
import type { Context as KonvaContext } from "konva/lib/Context";
import { useEffect, useRef, useState } from "react";
import { Layer, Shape, Stage } from "react-konva/lib/ReactKonvaCore";
import "./board.css";
import type { BoardController } from "./board-controller.ts";
import { BoardHost } from "./board-host.ts";
import { listenOn } from "./board-input.ts";
import { makeTileCanvas } from "./paint/tile-canvas.ts";
import { readPalette } from "./palette.ts";

/**
 * The drawing. React sets up one stage with one custom-drawn shape; everything on it is painted by the host, which listens to
 * the app on its own. For people who don't see it the outline says the same in words, so the stage itself is hidden from them.
 */
export function Board({ controller }: { readonly controller: BoardController }) {
  const element = useRef<HTMLDivElement>(null);
  const layer = useRef<KonvaLayer>(null);
  const host = useRef<BoardHost | null>(null);
  const [size, setSize] = useState({ width: 0, height: 0, pixelRatio: 1 });

  useEffect(() => {
    const board = element.current;
    if (board === null) return;
    const started = new BoardHost(controller, {
      requestPaint: () => layer.current?.batchDraw(),
      setCursor: (cursor) => (board.style.cursor = cursor),
      readPalette: () => readPalette(getComputedStyle(board)),
      makeCanvas: (isOpaque) => makeTileCanvas(isOpaque, () => host.current?.redraw()),
    });
    host.current = started;
    const stops = [
      started.start(),
      listenOn(board, started, () => controller.getSnapshot().placing?.dragged === true),
      watchSize(board, setSize),
      watchLetters(started),
      watchPixels(layer.current?.getCanvas()._canvas, started),
    ];
    return () => {
      host.current = null;
      for (const stop of stops) stop();
    };
  }, [controller]);

  useEffect(() => {
    // Setting it, even to what it is, wipes the canvas.
    const canvas = layer.current?.getCanvas();
    if (canvas !== undefined && canvas.getPixelRatio() !== size.pixelRatio) canvas.setPixelRatio(size.pixelRatio);
    host.current?.resize(size, size.pixelRatio);
  }, [size, controller]);

  return (
    <div className="board" ref={element} aria-hidden="true">
      <Stage width={size.width} height={size.height} listening={false}>
        <Layer ref={layer} listening={false} clearBeforeDraw={false}>
          <Shape
            listening={false}
            perfectDrawEnabled={false}
            sceneFunc={(context: KonvaContext) => host.current?.paint(context._context)}
          />
        </Layer>
      </Stage>
    </div>
  );
}

interface BoardSize {
  readonly width: number;
  readonly height: number;
  readonly pixelRatio: number;
}

/** Tells the element's size in whole CSS pixels, and the display's pixel ratio, which changes with the screen and the browser's zoom. */
function watchSize(board: HTMLElement, tell: (size: BoardSize) => void): () => void {
  let told: BoardSize | null = null;
  const measure = () => {
    const size = { width: board.clientWidth, height: board.clientHeight, pixelRatio: window.devicePixelRatio };
    if (told?.width === size.width && told.height === size.height && told.pixelRatio === size.pixelRatio) return;
    told = size;
    tell(size);
  };
  const observer = new ResizeObserver(measure);
  observer.observe(board);
  let stopRatio = () => {};
  const watchRatio = () => {
    const query = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    const changed = () => {
      measure();
      watchRatio();
    };
    query.addEventListener("change", changed, { once: true });
    stopRatio = () => query.removeEventListener("change", changed);
  };
  watchRatio();
  measure();
  return () => {
    observer.disconnect();
    stopRatio();
  };
}

/** A canvas doesn't draw again by itself when its typeface arrives. */
function watchLetters(host: BoardHost): () => void {
  let isStopped = false;
  const faces = ['400 12px "Inter"', '600 12px "Inter"'].map((face) => document.fonts.load(face, "ΩA²"));
  void Promise.allSettled(faces).then(() => {
    if (!isStopped) host.redraw();
  });
  return () => {
    isStopped = true;
  };
}

/** A browser short of memory may take a canvas's pixels away; they come back empty. */
function watchPixels(canvas: HTMLCanvasElement | undefined, host: BoardHost): () => void {
  const redraw = () => host.redraw();
  canvas?.addEventListener("contextrestored", redraw);
  return () => canvas?.removeEventListener("contextrestored", redraw);
}
