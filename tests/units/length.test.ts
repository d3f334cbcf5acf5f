import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLength, parseLengthM } from "../../core/units/index.ts";

describe("reading a length", () => {
  it.each([
    ["2.3 m", 2.3],
    ["2,3m", 2.3],
    ["230 cm", 2.3],
    ["150 mm", 0.15],
    ["2 m 30 cm", 2.3],
    ["7 ft 6 in", 2.286],
    ["7.5 ft", 2.286],
    ["7ft6in", 2.286],
    ["7 ft 6", 2.286],
    ["7' 6\"", 2.286],
    ["90in", 2.286],
    ["6 1/2 in", 0.1651],
    ["1/2 in", 0.0127],
    ["7", 7],
  ])("takes %j as %d m", (typed, metres) => {
    expect(parseLengthM(typed)).toEqual({ ok: true, value: metres });
  });

  it("takes a bare number as feet where feet are read first", () => {
    expect(parseLengthM("10", "us")).toEqual({ ok: true, value: 3.048 });
  });

  it.each(["", "-3 m", "long", "6 in 7 ft", "3 kg", "7 ft 6 ft", "1/0 in", "2 3"])("refuses %j", (typed) => {
    expect(parseLengthM(typed)).toMatchObject({ ok: false, got: typed });
  });
});

describe("showing a length", () => {
  it.each([
    [0.15, "0.15 m (6 in)"],
    [2.3, "2.3 m (7 ft 7 in)"],
    [3.048, "3.05 m (10 ft)"],
    [0, "0 m (0 in)"],
    [0.1651, "0.165 m (6.5 in)"],
    [null, "unknown"],
  ])("%d m as %s", (metres, text) => {
    expect(formatLength(metres)).toBe(text);
  });

  it("puts feet first for who reads feet first", () => {
    expect(formatLength(2.3, "us")).toBe("7 ft 7 in (2.3 m)");
  });

  it("never shows 12 in beside feet", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (metres) => {
        expect(formatLength(metres)).not.toMatch(/ft 12 in/);
      }),
    );
  });
});
