import { describe, expect, test } from "vitest";
import { boxInView, isMapShown, mapOf, viewAbout } from "../../../app/store/map-of.ts";
import { EMPTY_DOCUMENT } from "../../../app/store/editor-state.ts";
import { lampCircuit, testEditor } from "../drawing.ts";

const desk = { width: 900, height: 600 };

describe("the map of the drawing", () => {
  test("has a box for each part, all of them inside its own", () => {
    const { parts, box } = mapOf(lampCircuit);
    expect(parts).toHaveLength(lampCircuit.parts.length);
    for (const part of parts) {
      expect(part.left).toBeGreaterThan(box!.left);
      expect(part.bottom).toBeLessThan(box!.bottom);
    }
  });

  test("frames what the Board shows, and brings any spot to its middle at the same scale", () => {
    const view = viewAbout({ x: 3, y: 4, scale: 10 }, [30, 5], desk);
    const { left, top, right, bottom } = boxInView(view, desk);
    expect([(left + right) / 2, (top + bottom) / 2, right - left, bottom - top]).toEqual([30, 5, 90, 60]);
  });

  test("comes by itself when part of the drawing is out of view, but not on a phone", () => {
    const { editor } = testEditor();
    editor.set({ boardSize: desk, view: { x: 100, y: 200, scale: 10 } });
    expect(isMapShown(editor.state)).toBe(false);
    editor.set({ view: { x: -200, y: 200, scale: 10 } });
    expect(isMapShown(editor.state)).toBe(true);
    editor.set({ boardSize: { width: 360, height: 400 } });
    expect(isMapShown(editor.state)).toBe(false);
    editor.setPreferences({ map: "on" });
    expect(isMapShown(editor.state)).toBe(true);
    editor.setPreferences({ map: "off" });
    expect(isMapShown(editor.state)).toBe(false);
  });

  test("of an empty sheet there is none", () => {
    const { editor } = testEditor(EMPTY_DOCUMENT);
    editor.setPreferences({ map: "on" });
    expect(isMapShown(editor.state)).toBe(false);
  });
});
