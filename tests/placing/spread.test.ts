import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread } from "../../core/placing/spread.ts";

const wishes = fc.array(
  fc.record({ at: fc.integer({ min: -200, max: 200 }), length: fc.integer({ min: 1, max: 20 }) }),
  {
    maxLength: 30,
  },
);

describe("spreading things in a row", () => {
  it("leaves things that already stand apart where they wish to be", () => {
    expect(
      spread([
        { at: 0, length: 3 },
        { at: 10, length: 3 },
      ]),
    ).toEqual([0, 10]);
  });

  it("moves two that wish the same place by the same amount", () => {
    expect(
      spread([
        { at: 10, length: 4 },
        { at: 10, length: 4 },
      ]),
    ).toEqual([8, 12]);
  });

  it("never lets one overlap the next, and keeps whole numbers", () => {
    fc.assert(
      fc.property(wishes, (row) => {
        const starts = spread(row);
        expect(starts.every(Number.isInteger)).toBe(true);
        const overlapping = starts.slice(1).filter((start, at) => start < starts[at]! + row[at]!.length);
        expect(overlapping).toEqual([]);
      }),
    );
  });
});
