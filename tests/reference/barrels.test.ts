import { describe, expect, it } from "vitest";
import { awgAreaMm2, barrelFits, barrelFor, circularMils, crimpPullOut } from "../../core/reference/index.ts";

const together = (...gauges: number[]) => gauges.reduce((sum, gauge) => sum + awgAreaMm2(gauge), 0);

describe("choosing an insulated barrel", () => {
  // Terminal makers' pages: red 22-16, blue 16-14, yellow 12-10 AWG.
  it.each([
    [22, "red"],
    [18, "red"],
    [16, "red"],
    [14, "blue"],
    [12, "yellow"],
    [10, "yellow"],
  ])("takes %d AWG in %s", (gauge, colour) => {
    expect(barrelFor(awgAreaMm2(gauge))?.colour).toBe(colour);
  });

  // The same pages: 0.5-1.5, 1.5-2.5 and 4-6 mm².
  it.each([
    [0.5, "red"],
    [1.5, "red"],
    [2.5, "blue"],
    [4, "yellow"],
    [6, "yellow"],
  ])("takes %d mm2 in %s", (areaMm2, colour) => {
    expect(barrelFor(areaMm2)?.colour).toBe(colour);
  });

  it("adds the copper of two 16 AWG to 5166 circular mils and wants a 12-10 barrel", () => {
    // Common practice, no source: the sum rule itself is a terminal maker's (guide 82561).
    const both = together(16, 16);
    expect(circularMils(both)).toBeCloseTo(5166, -1);
    expect(barrelFor(both)).toMatchObject({ colour: "yellow", awg: "12-10" });
  });

  it("puts 14 + 14 AWG in yellow, and has none for 12 + 12 AWG", () => {
    // Field notes of the trade: 4.16 mm² is yellow; 6.6 mm² is 9 AWG, beyond it.
    expect(barrelFor(together(14, 14))?.colour).toBe("yellow");
    expect(barrelFor(together(12, 12))).toBeNull();
  });

  it("has none for 24 AWG", () => {
    expect(barrelFor(awgAreaMm2(24))).toBeNull();
  });
});

describe("a barrel already chosen", () => {
  it("fits at both ends of its range", () => {
    expect(barrelFits("blue", awgAreaMm2(16))).toBe(true);
    expect(barrelFits("blue", 2.5)).toBe(true);
    expect(barrelFits("Blue ", awgAreaMm2(18))).toBe(false);
    expect(barrelFits("blue", together(16, 16))).toBe(false);
  });

  it("may be named by its range", () => {
    expect(barrelFits("10-16 mm2", 13.3)).toBe(true);
    expect(barrelFits("10 - 16", 16)).toBe(true);
    expect(barrelFits("10-16 mm2", 8.4)).toBe(false);
  });

  it("is unknown by any other name", () => {
    expect(barrelFits("green", 1)).toBeNull();
    expect(barrelFits("", 1)).toBeNull();
  });
});

describe("pull of a crimp", () => {
  it("takes the listed wire below for a size between", () => {
    expect(crimpPullOut("1.5 mm2")).toEqual(crimpPullOut("16 AWG"));
    expect(crimpPullOut("3 AWG")).toEqual(crimpPullOut("4 AWG"));
  });

  it("has no answer below 26 AWG or for no size", () => {
    expect(crimpPullOut("30 AWG")).toBeNull();
    expect(crimpPullOut("thick")).toBeNull();
  });
});
