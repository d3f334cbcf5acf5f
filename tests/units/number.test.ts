import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatNumber, parseNumber } from "../../core/units/index.ts";

describe("reading a number", () => {
  it.each([
    ["12", 12],
    [" 12.5 ", 12.5],
    ["1,5", 1.5],
    [".5", 0.5],
    ["0,125", 0.125],
    ["-3", -3],
    ["−3", -3],
    ["1e3", 1000],
  ])("takes %j", (typed, value) => {
    expect(parseNumber(typed)).toEqual({ ok: true, value });
  });

  it.each(["", "twelve", "1.2.3", "1 2", "1e999", "12 V", "Infinity", "NaN"])(
    "refuses %j, saying what it got",
    (typed) => {
      expect(parseNumber(typed)).toMatchObject({ ok: false, got: typed });
    },
  );

  it("refuses a comma that could mean thousands instead of guessing", () => {
    expect(parseNumber("1,250")).toMatchObject({ ok: false, wanted: expect.stringContaining("thousands") });
  });

  it("reads back what it wrote, to the digits written", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const read = parseNumber(formatNumber(value, 6));
        expect(read.ok && Math.abs(read.value - value) <= Math.abs(value) * 5.1e-6 + 1e-20).toBe(true);
      }),
    );
  });
});

describe("showing a number", () => {
  it.each([
    [8.314, "8.31"],
    [12.6, "12.6"],
    [12, "12"],
    [1234, "1234"],
    [99.96, "100"],
    [0.000123, "0.000123"],
    [0, "0"],
    [-0, "0"],
    [-0.5, "-0.5"],
  ])("%d as %s", (value, text) => {
    expect(formatNumber(value)).toBe(text);
  });
});
