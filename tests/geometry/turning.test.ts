import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  boxHolds,
  boxOfStroke,
  standBox,
  standPoint,
  standSide,
  standStroke,
  stepOf,
} from "../../core/geometry/index.ts";

const turn = fc.constantFrom(0 as const, 90 as const, 180 as const, 270 as const);
const stance = fc.record({
  at: fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 })),
  turn,
  flip: fc.boolean(),
});
const side = fc.constantFrom("left" as const, "right" as const, "up" as const, "down" as const);

describe("a symbol as it stands", () => {
  it("turns clockwise on a sheet whose y runs down", () => {
    expect(standPoint([2, 0], { at: [10, 10], turn: 90, flip: false })).toEqual([10, 12]);
    expect(standSide("right", { at: [0, 0], turn: 90, flip: false })).toBe("down");
  });

  it("is flipped before it is turned", () => {
    expect(standPoint([2, 1], { at: [0, 0], turn: 90, flip: true })).toEqual([-1, -2]);
  });

  it("keeps every exit pointing where its terminal moved", () => {
    fc.assert(
      fc.property(stance, side, (at, exit) => {
        const centre = standPoint([0, 0], at);
        const out = standPoint(stepOf(exit), at);
        const step = stepOf(standSide(exit, at));
        expect([out[0] - centre[0], out[1] - centre[1]]).toEqual([step[0], step[1]]);
      }),
    );
  });

  it("keeps strokes inside its turned bounds", () => {
    const stroke = { shape: "arc", centre: [1, 2], radius: 1, start: 0, end: 90 } as const;
    fc.assert(
      fc.property(stance, (at) => {
        const bounds = standBox({ left: 0, top: 1, right: 2, bottom: 3 }, at);
        const box = boxOfStroke(standStroke(stroke, at));
        expect(boxHolds(bounds, [box.left, box.top]) && boxHolds(bounds, [box.right, box.bottom])).toBe(true);
      }),
    );
  });

  it("turns an arc with its symbol and mirrors it when flipped", () => {
    const arc = { shape: "arc", centre: [0, 0], radius: 1, start: 0, end: 90 } as const;
    const turned = standStroke(arc, { at: [0, 0], turn: 90, flip: false });
    const flipped = standStroke(arc, { at: [0, 0], turn: 0, flip: true });
    expect(turned).toMatchObject({ start: 90, end: 180 });
    expect(flipped).toMatchObject({ start: 90, end: 180 });
  });

  it("holds text by its other end once it faces the other way", () => {
    const text = { shape: "text", centre: [1, 0], text: "30", size: 0.5, anchor: "start" } as const;
    expect(standStroke(text, { at: [0, 0], turn: 180, flip: false })).toMatchObject({ anchor: "end", centre: [-1, 0] });
  });
});
