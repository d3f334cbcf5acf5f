import { describe, expect, it } from "vitest";
import { NO_OVERLAY } from "../../../../app/board/board-overlay.ts";
import type { BoardMarks } from "../../../../app/board/marks.ts";
import { Painter } from "../../../../app/board/paint/painter.ts";
import type { Document } from "../../../../core/document/index.ts";
import { applyEdits } from "../../../../core/document/index.ts";
import { pictureOf } from "../../../../core/picture/index.ts";
import { holdParts, liftHeld } from "../../../../app/board/tools/lift.ts";
import { recordingContext } from "../support/recording-context.ts";
import { frameOf, lamp, sheet, wire } from "../support/sheets.ts";

const document = sheet(
  [lamp("e1", 10, 10), lamp("e2", 30, 10), lamp("e3", 50, 40)],
  [wire("w1", "e1.-", "e2.+", { label: "L1" })],
);

function painting() {
  const screen = recordingContext();
  const tiles: ReturnType<typeof recordingContext>[] = [];
  const painter = new Painter(() => {
    const tile = recordingContext();
    tiles.push(tile);
    return { image: {} as CanvasImageSource, context: tile.context };
  });
  const tileCalls = () => tiles.reduce((sum, tile) => sum + tile.calls.length, 0);
  const forget = () => [screen, ...tiles].forEach((each) => each.clear());
  return { painter, screen, tiles, tileCalls, forget };
}

/** Paints until nothing is left to do. */
function settle(painter: Painter, context: CanvasRenderingContext2D, frame: ReturnType<typeof frameOf>): number {
  for (let frames = 1; ; frames++) if (!painter.paint(context, frame)) return frames;
}

describe("the painter", () => {
  it("letters parts and wires on the tiles and copies the tiles onto the screen", () => {
    const { painter, screen, tiles } = painting();
    painter.paint(screen.context, frameOf(document));
    expect(tiles.flatMap(({ texts }) => texts)).toEqual(expect.arrayContaining(["E1", "E2", "L1"]));
    expect(screen.texts).toEqual([]);
    expect(screen.calls).toContain("drawImage");
  });

  it("does nothing at all when shown the same again", () => {
    const { painter, screen, tileCalls, forget } = painting();
    const frame = frameOf(document);
    settle(painter, screen.context, frame);
    forget();
    expect(painter.paint(screen.context, { ...frame })).toBe(false);
    expect(screen.calls).toEqual([]);
    expect(tileCalls()).toBe(0);
  });

  it("pans without drawing the drawing again", () => {
    const { painter, screen, tileCalls, forget } = painting();
    const frame = frameOf(document);
    settle(painter, screen.context, frame);
    forget();
    painter.paint(screen.context, { ...frame, view: { x: -40, y: -20, scale: 10 } });
    expect(tileCalls()).toBe(0);
    expect(screen.calls).toContain("drawImage");
  });

  it("shows old tiles scaled while zooming, then makes at most two crisp in a frame", () => {
    const { painter, screen, tiles, forget } = painting();
    const frame = frameOf(document);
    settle(painter, screen.context, frame);
    forget();
    const near = { ...frame, view: { x: 0, y: 0, scale: 20 } };
    expect(painter.paint(screen.context, near)).toBe(true);
    expect(drawn(tiles)).toBe(0);
    expect(screen.calls).toContain("drawImage");
    forget();
    painter.paint(screen.context, { ...near });
    expect(drawn(tiles)).toBe(2);
  });

  it("drags one part without touching the tiles after it was taken up", () => {
    const { painter, screen, tileCalls, forget } = painting();
    const frame = frameOf(document);
    settle(painter, screen.context, frame);
    const held = holdParts(document, new Set(["e3"]));
    const dragged = (dx: number) => ({
      ...frame,
      overlay: { ...NO_OVERLAY, lift: liftHeld(held, painter.scene, dx, 0) },
    });
    painter.paint(screen.context, dragged(1));
    forget();
    painter.paint(screen.context, dragged(2));
    expect(tileCalls()).toBe(0);
    expect(screen.calls.filter((call) => call === "clip")).toHaveLength(1);
  });

  it("redraws only tiles that show what was edited", () => {
    const { painter, screen, tiles, forget } = painting();
    const frame = frameOf(document);
    settle(painter, screen.context, frame);
    forget();
    const moved = applyEdits(document, [{ op: "set-part", id: "e3", change: { at: [50, 42] } }]);
    painter.paint(screen.context, { ...frame, revision: 2, picture: pictureOf(moved, undefined, frame.picture) });
    const touched = tiles.filter(({ calls }) => calls.length > 0);
    expect(touched.length).toBeGreaterThan(0);
    expect(touched.length).toBeLessThan(tiles.length);
    expect(touched.flatMap(({ texts }) => texts)).not.toContain("E1");
  });

  it("marks terminals on top of the tiles, without redrawing those", () => {
    const { painter, screen, tileCalls, forget } = painting();
    const frame = frameOf(document);
    settle(painter, screen.context, frame);
    forget();
    painter.paint(screen.context, {
      ...frame,
      marks: marksOf(document, { terminals: new Uint8Array(6).fill(5 + 16) }),
    });
    expect(tileCalls()).toBe(0);
    expect(screen.calls.filter((call) => call === "arc")).toHaveLength(6);
  });

  it("draws one path for a kind of mark, however many have it", () => {
    const paths = (count: number) => {
      const parts = Array.from({ length: count }, (_, i) => lamp(`e${i}`, (i % 8) * 8, Math.floor(i / 8) * 6));
      const many = sheet(parts);
      const { painter, screen, forget } = painting();
      const frame = frameOf(many);
      settle(painter, screen.context, frame);
      forget();
      painter.paint(screen.context, {
        ...frame,
        marks: marksOf(many, { terminals: new Uint8Array(2 * count).fill(4) }),
      });
      return screen.calls.filter((call) => call === "fill" || call === "stroke").length;
    };
    expect(paths(64)).toBe(paths(4));
  });

  it("keeps a part's marks while a newer drawing waits for its answer", () => {
    const { painter, screen, forget } = painting();
    const frame = frameOf(document);
    const marks = marksOf(document, { terminals: new Uint8Array([0, 0, 0, 0, 4, 4]) });
    settle(painter, screen.context, { ...frame, marks });
    forget();
    const without = applyEdits(document, [{ op: "remove-part", id: "e1" }]);
    painter.paint(screen.context, {
      ...frame,
      marks,
      revision: 2,
      picture: pictureOf(without, undefined, frame.picture),
    });
    expect(screen.calls.filter((call) => call === "fill").length).toBeGreaterThan(0);
  });

  it("draws symbols as outlines without letters when they are a few pixels wide", () => {
    const { painter, screen, tiles } = painting();
    painter.paint(screen.context, frameOf(document, { view: { x: 0, y: 0, scale: 1.2 } }));
    expect(tiles.flatMap(({ texts }) => texts)).toEqual([]);
  });

  it("reads no pixels", () => {
    const { painter, screen, tiles } = painting();
    settle(painter, screen.context, frameOf(document));
    expect([screen, ...tiles].flatMap(({ calls }) => calls)).not.toContain("getImageData");
  });
});

function drawn(tiles: readonly ReturnType<typeof recordingContext>[]): number {
  return tiles.filter(({ calls }) => calls.length > 0).length;
}

function marksOf({ parts, wires }: Document, change: Partial<BoardMarks>): BoardMarks {
  return {
    revision: 1,
    terminals: new Uint8Array(2 * parts.length),
    wires: new Float32Array(wires.length),
    wireFlags: new Uint8Array(wires.length),
    parts: new Uint8Array(parts.length),
    positions: {},
    ...change,
  };
}
