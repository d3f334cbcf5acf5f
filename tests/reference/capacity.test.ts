import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wireCapacity, wireCapacityA, type WireInPlace } from "../../core/reference/index.ts";

const wire = (size: string, changed: Partial<WireInPlace> = {}): WireInPlace => ({
  size,
  insulationC: 105,
  ambientC: 30,
  bundle: 1,
  ...changed,
});

// A vehicle maker's 40 °C table; the gauges beside its areas are this project's own mapping.
const VEHICLE_AWG = [
  ["20 AWG", 7.5],
  ["18 AWG", 10],
  ["16 AWG", 15],
  ["14 AWG", 20],
  ["12 AWG", 25],
  ["10 AWG", 30],
  ["8 AWG", 40],
  ["6 AWG", 50],
  ["4 AWG", 80],
  ["2 AWG", 100],
  ["1/0 AWG", 125],
  ["2/0 AWG", 150],
  ["3/0 AWG", 200],
] as const;

describe("the vehicle table", () => {
  it.each(VEHICLE_AWG)("lets %s carry %d A", (size, amps) => {
    expect(wireCapacityA(wire(size), "vehicle")).toBe(amps);
  });

  it.each([
    ["13 AWG", "14 AWG"],
    ["3 AWG", "4 AWG"],
    ["1 AWG", "2 AWG"],
    ["4/0 AWG", "3/0 AWG"],
    ["2 mm2", "1.5 mm2"],
    ["3 mm2", "2.5 mm2"],
    ["95 mm2", "70 mm2"],
  ])("reads %s as the size below, %s", (size, rowSize) => {
    expect(wireCapacity(wire(size), "vehicle")?.rowSize).toBe(rowSize);
  });

  it.each(["22 AWG", "0.35 mm2", "thick", ""])("has no answer for %j", (size) => {
    expect(wireCapacityA(wire(size), "vehicle")).toBeNull();
  });

  it("holds unchanged up to 40 °C", () => {
    expect(wireCapacityA(wire("14 AWG", { ambientC: -20 }), "vehicle")).toBe(20);
    expect(wireCapacityA(wire("14 AWG", { ambientC: 40 }), "vehicle")).toBe(20);
  });

  it("falls above 40 °C with the heat the insulation still allows", () => {
    // Hand: 20 · sqrt((105 − 60)/(105 − 40)) = 20 · sqrt(45/65).
    expect(wireCapacityA(wire("14 AWG", { ambientC: 60 }), "vehicle")).toBeCloseTo(16.641, 3);
  });

  it.each([105, 130])("is 0 at an ambient of %d °C, at or over the insulation rating", (ambientC) => {
    expect(wireCapacityA(wire("14 AWG", { ambientC }), "vehicle")).toBe(0);
  });

  it("is 0 when the ambient is over a poor insulation, though below 40 °C", () => {
    expect(wireCapacityA(wire("14 AWG", { insulationC: 35, ambientC: 38 }), "vehicle")).toBe(0);
  });
});

describe("bundles", () => {
  // 33 CFR 183.425 note 2 as repeated for UL 1426 cable; above 24 only remembered, so only its direction is held.
  it.each([
    [1, 1],
    [2, 1],
    [3, 0.7],
    [4, 0.6],
    [6, 0.6],
    [7, 0.5],
    [24, 0.5],
  ])("of %d keep %d of the limit", (bundle, share) => {
    expect(wireCapacityA(wire("14 AWG", { bundle }), "vehicle")).toBeCloseTo(20 * share, 12);
  });

  it("over 24 keep less than 24 do", () => {
    expect(wireCapacityA(wire("14 AWG", { bundle: 25 }), "vehicle")).toBeLessThan(10);
  });

  it("and heat multiply", () => {
    const both = wireCapacityA(wire("14 AWG", { bundle: 3, ambientC: 60 }), "vehicle");
    expect(both).toBeCloseTo(20 * 0.7 * Math.sqrt(45 / 65), 12);
  });
});

describe("the insulation table", () => {
  it("takes the lower column for a rating between two", () => {
    // 33 CFR 183.425 Table 5: 14 AWG at 80 °C is 25 A, at 90 °C 30 A.
    expect(wireCapacityA(wire("14 AWG", { insulationC: 85 }), "insulation")).toBe(25);
  });

  it("takes its last column for ratings above 200 °C and has no answer below 60 °C", () => {
    expect(wireCapacityA(wire("14 AWG", { insulationC: 260 }), "insulation")).toBe(45);
    expect(wireCapacityA(wire("14 AWG", { insulationC: 55 }), "insulation")).toBeNull();
  });

  it.each([
    ["1.5 mm2", "16 AWG"],
    ["2.5 mm2", "14 AWG"],
    ["10 mm2", "8 AWG"],
    ["7 AWG", "8 AWG"],
  ])("reads %s as %s, the largest gauge it has the copper of", (size, rowSize) => {
    expect(wireCapacity(wire(size), "insulation")?.rowSize).toBe(rowSize);
  });

  it("has no answer for a wire under 18 AWG", () => {
    expect(wireCapacityA(wire("0.75 mm2"), "insulation")).toBeNull();
    expect(wireCapacityA(wire("20 AWG"), "insulation")).toBeNull();
  });

  it("falls from 30 °C up", () => {
    // Hand: 35 · sqrt((105 − 50)/(105 − 30)).
    expect(wireCapacityA(wire("14 AWG", { ambientC: 50 }), "insulation")).toBeCloseTo(29.972, 3);
  });
});

describe("any current limit", () => {
  const sizes = fc.constantFrom("20 AWG", "14 AWG", "6 AWG", "3/0 AWG", "0.5 mm2", "2.5 mm2", "70 mm2");
  const tables = fc.constantFrom("vehicle" as const, "insulation" as const);

  it("never rises with more heat or more company", () => {
    fc.assert(
      fc.property(
        sizes,
        tables,
        fc.integer({ min: -40, max: 150 }),
        fc.integer({ min: 1, max: 40 }),
        (size, table, ambientC, bundle) => {
          const here = wireCapacityA(wire(size, { ambientC, bundle }), table) ?? 0;
          expect(wireCapacityA(wire(size, { ambientC: ambientC + 5, bundle }), table) ?? 0).toBeLessThanOrEqual(here);
          expect(wireCapacityA(wire(size, { ambientC, bundle: bundle + 1 }), table) ?? 0).toBeLessThanOrEqual(here);
        },
      ),
    );
  });
});
