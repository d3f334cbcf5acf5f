import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wireAreaMm2, wireOhmPerM } from "../../core/reference/index.ts";

describe("resistance of a wire size", () => {
  it("scales with conductor temperature: 16 AWG at 60 °C is 15.7 % above 20 °C", () => {
    // IEC 60028: 1 + 0.00393 · 40.
    const cold = wireOhmPerM("16 AWG", 20)?.ohmPerM ?? 0;
    expect((wireOhmPerM("16 AWG", 60)?.ohmPerM ?? 0) / cold).toBeCloseTo(1.1572, 9);
  });

  it("takes the vehicle-cable maximum to 16 mm2 and class 5 above, where both list a size", () => {
    expect(wireOhmPerM("16 mm2", 20)?.source).toMatch(/ISO 6722/);
    expect(wireOhmPerM("25 mm2", 20)?.source).toMatch(/IEC 60228/);
  });

  it("says so where a size is only remembered", () => {
    expect(wireOhmPerM("5 mm2", 20)?.fromMemory).toBe(true);
    expect(wireOhmPerM("6 mm2", 20)?.fromMemory).toBe(false);
  });

  it.each(["1.7 mm2", "500 mm2", "", "thick"])("has no answer for %j instead of a guess", (size) => {
    expect(wireOhmPerM(size, 20)).toBeNull();
  });

  it("falls with every step to a thicker metric size", () => {
    const sizes = [
      0.13, 0.22, 0.35, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 50, 60, 70, 95,
      120, 150, 185, 240, 300,
    ];
    const ohms = sizes.map((mm2) => wireOhmPerM(`${mm2} mm2`, 20)?.ohmPerM ?? Number.NaN);
    expect(ohms).toEqual(ohms.toSorted((a, b) => b - a));
  });

  it("is never below solid copper of the same area", () => {
    // IEC 60028: 17.241 ohm·mm²/km.
    fc.assert(
      fc.property(
        fc.constantFrom("0.5 mm2", "1.5 mm2", "6 mm2", "16 mm2", "25 mm2", "95 mm2", "12 AWG", "1/0 AWG"),
        (size) => {
          const wire = wireOhmPerM(size, 20);
          expect((wire?.ohmPerM ?? 0) * (wire?.areaMm2 ?? 0)).toBeGreaterThanOrEqual(0.017241 * (1 - 1e-9));
        },
      ),
    );
  });
});

describe("copper area of a wire size", () => {
  it("is the nominal area of metric wire, listed or not", () => {
    expect(wireAreaMm2("1.7 mm2")).toBe(1.7);
  });

  it("has no answer for what is no size", () => {
    expect(wireAreaMm2("thick")).toBeNull();
  });
});
