import { expect, test } from "vitest";
import { orchardTractor, orchardTractorPutRight } from "../../core/examples/orchard-tractor.ts";
import { foundIn, reportOn, voltsOf } from "./found.ts";

test("the tap for the beacon has no fuse of its own, the relay is small, the beacon is grounded through paint", () => {
  expect(foundIn(orchardTractor)).toEqual([
    "advice piercing-tap j1",
    "fix contact-overload k1",
    "fix no-return g2",
    "fix under-rated s2",
    "stop fuse-over-wire w6",
    "stop fuse-over-wire w7",
  ]);
  expect(foundIn(orchardTractorPutRight)).toEqual([]);
});

test("on the road the beacon gets 13.69 V and draws 1.10 A", () => {
  // 10 AWG is 3.2769 milliohm a metre, 18 AWG 20.945. Battery 6, L1 0.49, fuse 25 A 2.52, L2 5.24, B1 12.57, switch 10, B2 58.65,
  // G3 4.19 milliohm: 99.66 together.
  const volts = voltsOf(15, 13.8, 0.09966);
  const { e3 } = reportOn(orchardTractor).situations["road"]!.parts;
  expect(e3!.volts).toBeCloseTo(volts, 3);
  expect(e3!.amps).toBeCloseTo(15 / volts, 3);
});
