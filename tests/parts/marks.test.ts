import { describe, expect, it } from "vitest";
import { boxOfStroke, unionBox, type Stroke } from "../../core/geometry/index.ts";
import { markLegend, markStrokes, type Mark } from "../../core/parts/index.ts";

const marks = Object.keys(markLegend) as Mark[];
/** Shape alone, as in black and white: colour is not in strokes at all. */
const shape = (strokes: readonly Stroke[]) => JSON.stringify(strokes);

describe("terminal marks", () => {
  it("differ from one another by shape, direct or through a load", () => {
    const live: Mark[] = ["always", "at-rest", "switched"];
    const shapes = [...marks.map((mark) => markStrokes(mark, false)), ...live.map((mark) => markStrokes(mark, true))];
    expect(new Set(shapes.map(shape)).size).toBe(shapes.length);
  });

  it("are about 2 mm across: no more than half a grid step either way", () => {
    for (const mark of marks) {
      const box = markStrokes(mark, true).map(boxOfStroke).reduce(unionBox);
      for (const side of [box.left, box.top, box.right, box.bottom]) expect(Math.abs(side)).toBeLessThanOrEqual(0.5);
    }
  });

  it("say what they mean in a few words", () => {
    for (const mark of marks) expect(markLegend[mark]).toMatch(/^[a-z ]{5,30}$/);
  });
});
