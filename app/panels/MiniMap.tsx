import { useEffect, useRef, type KeyboardEvent, type PointerEvent } from "react";
import type { Box, Point } from "../../core/geometry/index.ts";
import { useApp, useDrawing, useEditor } from "../app-context.tsx";
import { boxInView, isMapShown, mapOf, viewAbout } from "../store/map-of.ts";

/** CSS pixels. */
const MAP = { width: 176, height: 116 };
/** How far an arrow key moves, as a share of what the Board shows. */
const STEP = 0.25;
/** So far in from the map's edge the frame stays to be seen when the Board looks past the drawing. CSS pixels. */
const LEAST_SEEN_PX = 6;

/** The whole drawing in small, with a frame round what the Board shows: drag the frame, or move it with the arrow keys. */
export function MiniMap() {
  const box = mapOf(useDrawing()).box;
  const isShown = useEditor(isMapShown);
  return isShown && box !== null ? <ShownMap box={box} /> : null;
}

function ShownMap({ box }: { readonly box: Box }) {
  const { editor } = useApp();
  const drawing = useDrawing();
  const view = useEditor((state) => state.view);
  const boardSize = useEditor((state) => state.boardSize);
  const theme = useEditor((state) => state.theme);
  const canvas = useRef<HTMLCanvasElement>(null);
  const onMap = mapScale(box);

  useEffect(() => {
    if (canvas.current !== null) paintMap(canvas.current, mapOf(drawing).parts, mapScale(box));
  }, [drawing, box, theme]);

  const look = (at: Point) => editor.set({ view: viewAbout(editor.state.view, at, editor.state.boardSize) });
  const point = (event: PointerEvent<HTMLElement>) => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    look(onMap.toSheet([event.clientX - left, event.clientY - top]));
  };
  const shown = boxInView(view, boardSize);
  const walk = (event: KeyboardEvent) => {
    const [dx, dy] = ARROWS[event.key] ?? [0, 0];
    if (dx === 0 && dy === 0) return;
    event.preventDefault();
    const [width, height] = [shown.right - shown.left, shown.bottom - shown.top];
    look([shown.left + width * (0.5 + STEP * dx), shown.top + height * (0.5 + STEP * dy)]);
  };
  const [left, top] = onMap.toMap([shown.left, shown.top]);
  const [right, bottom] = onMap.toMap([shown.right, shown.bottom]);
  const frame = {
    left: Math.min(MAP.width - LEAST_SEEN_PX, Math.max(0, left)),
    top: Math.min(MAP.height - LEAST_SEEN_PX, Math.max(0, top)),
    right: Math.max(LEAST_SEEN_PX, Math.min(MAP.width, right)),
    bottom: Math.max(LEAST_SEEN_PX, Math.min(MAP.height, bottom)),
  };
  return (
    <button
      type="button"
      className="mini-map"
      aria-label="Map of the drawing; the arrow keys move the view"
      style={MAP}
      onKeyDown={walk}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        point(event);
      }}
      onPointerMove={(event) => event.currentTarget.hasPointerCapture(event.pointerId) && point(event)}
    >
      <canvas ref={canvas} aria-hidden="true" style={MAP} />
      <span
        className="mini-map-frame"
        style={{
          left: frame.left,
          top: frame.top,
          width: frame.right - frame.left,
          height: frame.bottom - frame.top,
        }}
      />
    </button>
  );
}

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The drawing's box in the middle of the map, as large as it goes. */
function mapScale({ left, top, right, bottom }: Box) {
  const scale = Math.min(MAP.width / (right - left), MAP.height / (bottom - top));
  const x = MAP.width / 2 - ((left + right) / 2) * scale;
  const y = MAP.height / 2 - ((top + bottom) / 2) * scale;
  return {
    toMap: ([sheetX, sheetY]: Point): Point => [x + sheetX * scale, y + sheetY * scale],
    toSheet: ([mapX, mapY]: Point): Point => [(mapX - x) / scale, (mapY - y) / scale],
  };
}

function paintMap(canvas: HTMLCanvasElement, parts: readonly Box[], { toMap }: ReturnType<typeof mapScale>): void {
  const context = canvas.getContext("2d");
  if (context === null) return;
  const ratio = window.devicePixelRatio;
  canvas.width = MAP.width * ratio;
  canvas.height = MAP.height * ratio;
  context.scale(ratio, ratio);
  context.fillStyle = getComputedStyle(canvas).color;
  for (const part of parts) {
    const [left, top] = toMap([part.left, part.top]);
    const [right, bottom] = toMap([part.right, part.bottom]);
    // However small the drawing comes out, each part is a dot.
    context.fillRect(left, top, Math.max(1.5, right - left), Math.max(1.5, bottom - top));
  }
}
