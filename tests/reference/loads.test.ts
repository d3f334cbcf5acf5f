import { describe, expect, it } from "vitest";
import { filamentA, fuseDistanceM, wireCapacityA, withstandA2s } from "../../core/reference/index.ts";

describe("a filament lamp", () => {
  it("draws 4.9 % more at 14.4 than at 13.2 V", () => {
    // Fink and Beaty p. 22-8 as quoted: current goes with the 0.55 power of volts, (14.4/13.2)^0.55.
    expect(filamentA(55, 12.8, 14.4) / filamentA(55, 12.8, 13.2)).toBeCloseTo(1.049, 4);
  });

  it("draws its rated watts at its rated volts, either way round", () => {
    expect(filamentA(50, 12.8, 12.8)).toBeCloseTo(50 / 12.8, 12);
    expect(filamentA(50, 12.8, -12.8)).toBeCloseTo(-50 / 12.8, 12);
    expect(filamentA(50, 12.8, 0)).toBe(0);
  });
});

describe("two 50 W lamps at 12 V", () => {
  // Common practice, no source.
  const amps = 2 * filamentA(50, 12, 12);

  it("draw 8.3 A, so a 10 A fuse is 83 % loaded", () => {
    expect(amps).toBeCloseTo(8.33, 2);
    expect((100 * amps) / 10).toBeCloseTo(83.3, 1);
  });

  it("are within what 16 AWG carries", () => {
    const wire = { size: "16 AWG", insulationC: 105, ambientC: 30, bundle: 1 };
    expect(wireCapacityA(wire, "vehicle")).toBeGreaterThan(amps);
  });
});

describe("a short", () => {
  it("may last longer in cross-linked wire than in PVC", () => {
    // IEC 60364-4-43 Table 43A: k 143 and 115; 105 °C vehicle cable is taken as PVC.
    expect(Math.sqrt(withstandA2s(1, 105))).toBeCloseTo(115, 9);
    expect(Math.sqrt(withstandA2s(1, 125))).toBeCloseTo(143, 9);
  });
});

describe("distance to the fuse", () => {
  it("is 7 in bare and 40 in sheathed, rounded to whole centimetres", () => {
    // 33 CFR 183.455: 7 inches, 40 inches.
    expect(Math.abs(fuseDistanceM.bare - 7 * 0.0254)).toBeLessThan(0.005);
    expect(Math.abs(fuseDistanceM.sheathed - 40 * 0.0254)).toBeLessThan(0.02);
  });
});
