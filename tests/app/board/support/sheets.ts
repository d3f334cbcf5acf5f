import type { Document, Part, Wire } from "../../../../core/document/index.ts";
import { pictureOf } from "../../../../core/picture/index.ts";
import { NO_OVERLAY } from "../../../../app/board/board-overlay.ts";
import { Scene } from "../../../../app/board/paint/scene.ts";
import type { Frame } from "../../../../app/board/paint/frame.ts";
import type { PointerStep } from "../../../../app/board/tools/board-event.ts";
import type { Sheet } from "../../../../app/board/tools/tool.ts";
import { PALETTE_KEYS, type Palette } from "../../../../app/board/palette.ts";

const palette = Object.fromEntries(PALETTE_KEYS.map((key) => [key, `the ${key}`])) as unknown as Palette;

export function sheet(parts: readonly Part[], wires: readonly Wire[] = []): Document {
  return { format: "groundstrap", version: 1, parts, wires };
}

export function lamp(id: string, x: number, y: number, more: Partial<Part> = {}): Part {
  return { id, kind: "lamp", at: [x, y], ...more };
}

export function wire(id: string, from: string, to: string, more: Partial<Wire> = {}): Wire {
  return { id, from, to, ...more };
}

/** What a tool looks at, 10 px to a grid step. */
export function sheetOf(document: Document, selection: readonly string[] = []): Sheet {
  const scene = new Scene();
  scene.update(pictureOf(document));
  return { document, scene, selection: new Set(selection), view: { x: 0, y: 0, scale: 10 }, placing: null };
}

export function frameOf(document: Document, change: Partial<Frame> = {}): Frame {
  return {
    picture: pictureOf(document),
    revision: 1,
    marks: null,
    view: { x: 0, y: 0, scale: 10 },
    width: 800,
    height: 600,
    pixelRatio: 1,
    palette,
    lettering: true,
    selection: new Set(),
    spotlight: [],
    leads: [],
    overlay: NO_OVERLAY,
    ...change,
  };
}

/** A pointer event at a spot of the sheet, seen 10 px to a step. */
export function point(type: PointerStep["type"], x: number, y: number, more: Partial<PointerStep> = {}): PointerStep {
  return { type, at: [x, y], screen: { x: x * 10, y: y * 10 }, isTouch: false, isAdding: false, ...more };
}
