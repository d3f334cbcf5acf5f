import { expect, test } from "vitest";
import { groomingVan, groomingVanPutRight } from "../../core/examples/grooming-van.ts";
import { foundIn, reportOn, voltsOf } from "./found.ts";

test("a lamp on 87a, two triggers that feed each other, and thin cable behind the inverter's fuse", () => {
  expect(foundIn(groomingVan)).toEqual([
    "advice rest-drain b1",
    "advice two-feeds w4",
    "advice two-feeds w8",
    "fix backfeed v1",
    "fix on-at-rest e2",
    "stop fuse-over-wire w20",
  ]);
  expect(foundIn(groomingVanPutRight)).toEqual([]);
});

test("the lamp on 87a draws 2.92 A with everything off: the battery is half flat in 31 hours", () => {
  // Milliohm a metre: 2 AWG 0.5127, 8 AWG 2.0609, 14 AWG 8.2852, 16 AWG 13.174. Battery 3, M1 and M2 2.782, fuse 40 A 1.44,
  // fuse 10 A 7.7, L1 8.285, contact 5, L6 28.983, G2 30.3, G5 0.615 milliohm: 88.105 together.
  const amps = 36 / voltsOf(36, 12.6, 0.088105);
  const { summary, situations } = reportOn(groomingVan);
  expect(situations["rest"]!.parts["e2"]!.amps).toBeCloseTo(amps, 3);
  expect(summary.daysToHalf).toBeCloseTo(90 / amps / 24, 3);
});
