import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  fuseColour,
  fuseMilliohm,
  hasOpeningTimes,
  holdsForS,
  largestRatingA,
  longestOpeningS,
  nextRatingA,
  standardRatingsA,
} from "../../core/reference/index.ts";

describe("resistance of a fuse", () => {
  it("lies on the straight line between two listed ratings", () => {
    // Hand: halfway between 7.7 (10 A) and 4.8 (15 A) milliohm.
    expect(fuseMilliohm(12.5)).toBeCloseTo(6.25, 12);
  });

  it("is 57.6 divided by the rating above 40 A", () => {
    expect(fuseMilliohm(100)).toBeCloseTo(0.576, 12);
    expect(fuseMilliohm(40)).toBeCloseTo(57.6 / 40, 12);
  });

  it("falls as the rating grows", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), (ratingA) => {
        expect(fuseMilliohm(ratingA * 1.01)).toBeLessThan(fuseMilliohm(ratingA));
      }),
    );
  });

  it.each([0, -5, Number.NaN])("refuses a rating of %d", (ratingA) => {
    expect(() => fuseMilliohm(ratingA)).toThrow(/wanted above 0 A/);
  });
});

describe("opening time of a fuse", () => {
  it("promises nothing below the lowest gate", () => {
    expect(longestOpeningS("blade", 10, 13.4)).toBeNull();
  });

  it("counts a current exactly at a gate, whatever the rounding", () => {
    expect(longestOpeningS("blade", 7.5, 10.125)).toBe(600);
  });

  it("promises no more for a stronger fault than the last gate does", () => {
    expect(longestOpeningS("blade", 10, 620)).toBe(longestOpeningS("blade", 10, 60));
  });

  it("takes a blade above 40 A as a high-current blade", () => {
    expect(longestOpeningS("blade", 60, 360)).toBe(longestOpeningS("maxi-blade", 60, 360));
  });

  it.each(["bolt", "breaker", "toString", null])("has no table for %s", (body) => {
    expect(longestOpeningS(body, 100, 10_000)).toBeNull();
    expect(hasOpeningTimes(body, 100)).toBe(false);
  });

  it("never grows with the fault", () => {
    const bodies = fc.constantFrom("blade", "mini-blade", "maxi-blade", "glass");
    fc.assert(
      fc.property(
        bodies,
        fc.constantFrom(2, 10, 30, 40, 60),
        fc.double({ min: 1, max: 2000, noNaN: true }),
        (body, ratingA, faultA) => {
          const slower = longestOpeningS(body, ratingA, faultA) ?? Number.POSITIVE_INFINITY;
          expect(longestOpeningS(body, ratingA, faultA * 1.5) ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(slower);
        },
      ),
    );
  });
});

describe("time a fuse carries an overload", () => {
  it("is that of the next gate up, and nothing above the last", () => {
    expect(holdsForS("blade", 10, 14)).toBe(holdsForS("blade", 10, 16));
    expect(holdsForS("maxi-blade", 40, 241)).toBe(0);
  });

  it.each(["glass", "bolt", null])("is not published for %s", (body) => {
    expect(holdsForS(body, 20, 27)).toBeNull();
  });

  it("is always shorter than the longest time it may take", () => {
    const bodies = fc.constantFrom("blade", "mini-blade", "maxi-blade");
    fc.assert(
      fc.property(
        bodies,
        fc.constantFrom(2, 10, 30, 40, 60),
        fc.double({ min: 1, max: 2000, noNaN: true }),
        (body, ratingA, amps) => {
          const longest = longestOpeningS(body, ratingA, amps) ?? Number.POSITIVE_INFINITY;
          expect(holdsForS(body, ratingA, amps) ?? 0).toBeLessThan(longest);
        },
      ),
    );
  });
});

describe("fuse ratings", () => {
  it("go up to the next one sold", () => {
    // Published: 60 W at 12.6 V is 4.76 A, times 1.25 is 5.95 A: 7.5 A preferred (iboats.com/threads/67117).
    expect(nextRatingA("blade", (60 / 12.6) * 1.25)).toBe(7.5);
    // Published: 100 W at 13.5 V is 7.41 A; by the 1.25 rule 9.26 A wants 10 A.
    expect(nextRatingA("blade", (100 / 13.5) * 1.25)).toBe(10);
    expect(nextRatingA("blade", 41)).toBeNull();
  });

  it("go down to the largest one a wire allows", () => {
    expect(largestRatingA("blade", 16.6)).toBe(15);
    expect(largestRatingA("blade", 20)).toBe(20);
    expect(largestRatingA("blade", 0.5)).toBeNull();
  });

  it("of the blade sizes are those of the makers' ranges", () => {
    // Maker's range pages quoting ISO 8820-3.
    expect(standardRatingsA("blade")).toEqual([1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 40]);
    expect(standardRatingsA("mini-blade")).toEqual([2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30]);
    expect(standardRatingsA("maxi-blade")).toEqual([20, 30, 40, 50, 60, 70, 80]);
    expect(standardRatingsA("none")).toEqual([]);
  });
});

describe("colour of a blade fuse", () => {
  // ISO 8820-3 / SAE J1284 through a vehicle maker's tables and three public lists.
  it.each([
    [1, "black"],
    [2, "grey"],
    [3, "violet"],
    [4, "pink"],
    [5, "tan"],
    [7.5, "brown"],
    [10, "red"],
    [15, "blue"],
    [20, "yellow"],
    [25, "clear"],
    [30, "green"],
    [40, "orange"],
  ])("of %d A is %s", (ratingA, colour) => {
    expect(fuseColour("blade", ratingA)).toBe(colour);
  });

  // SAE J1888 through a vehicle maker's table.
  it.each([
    [20, "yellow"],
    [30, "green"],
    [40, "orange"],
    [50, "red"],
    [60, "blue"],
  ])("of %d A in the maxi size is %s", (ratingA, colour) => {
    expect(fuseColour("maxi-blade", ratingA)).toBe(colour);
  });

  it("is left open where sources disagree or none is standard", () => {
    expect(fuseColour("blade", 35)).toBeNull();
    expect(fuseColour("glass", 10)).toBeNull();
  });
});
