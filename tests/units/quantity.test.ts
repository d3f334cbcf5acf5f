import { describe, expect, it } from "vitest";
import { formatQuantity, parseQuantity, typedErrorText } from "../../core/units/index.ts";

describe("reading a quantity", () => {
  it.each([
    ["8", "A", 8],
    ["8 A", "A", 8],
    ["300 mA", "A", 0.3],
    ["300mA", "A", 0.3],
    ["12.6 volts", "V", 12.6],
    ["1.2 kW", "W", 1200],
    ["4,7k", "ohm", 4700],
    ["90 Ω", "ohm", 90],
    ["90 ohms", "ohm", 90],
    ["7.7", "mohm", 7.7],
    ["7.7 mΩ", "mohm", 7.7],
    ["0.5 ohm", "mohm", 500],
    ["100 Ah", "Ah", 100],
    ["2 min", "s", 120],
    ["500 ms", "s", 0.5],
    ["1.5 mm²", "mm2", 1.5],
    ["40 °C", "degC", 40],
    ["104 F", "degC", 40],
    ["3", "", 3],
  ] as const)("takes %j as %s", (typed, unit, value) => {
    expect(parseQuantity(typed, unit)).toEqual({ ok: true, value: expect.closeTo(value, 9) });
  });

  it.each([
    ["3 V", "A"],
    ["", "A"],
    ["about 3", "A"],
    ["3 A", ""],
    ["1,250", "W"],
    ["5 m", "mohm"],
  ] as const)("refuses %j as %j", (typed, unit) => {
    expect(parseQuantity(typed, unit).ok).toBe(false);
  });

  it("says what was got and what was wanted", () => {
    const refusal = parseQuantity("3 V", "A");
    expect(!refusal.ok && typedErrorText(refusal)).toBe('Got "3 V", wanted a number in A');
  });

  it("quotes at most 60 characters", () => {
    const refusal = parseQuantity("x".repeat(500), "A");
    expect(!refusal.ok && refusal.got.length).toBe(60);
  });
});

describe("showing a quantity", () => {
  it.each([
    [8.314, "A", "8.31 A"],
    [12.6, "V", "12.6 V"],
    [0.05, "V", "50 mV"],
    [0.012, "A", "12 mA"],
    [0, "A", "0 A"],
    [1e-12, "A", "0 A"],
    [0.0077, "ohm", "7.7 mΩ"],
    [90, "ohm", "90 Ω"],
    [1500, "mohm", "1.5 Ω"],
    [-0.02, "A", "-20 mA"],
    [105, "degC", "105 °C"],
    [4, "", "4"],
    [null, "A", "unknown"],
  ] as const)("%d %s as %s", (value, unit, text) => {
    expect(formatQuantity(value, unit)).toBe(text);
  });
});
