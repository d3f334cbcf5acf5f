import { expect, test } from "vitest";
import { awningLamps, awningLampsPutRight } from "../../core/examples/awning-lamps.ts";
import { foundIn, reportOn } from "./found.ts";

test("one thing must not be powered up: the bare pin 87a", () => {
  expect(foundIn(awningLamps)).toEqual(["stop hot-bare k1.87a"]);
  expect(foundIn(awningLampsPutRight)).toEqual([]);
});

test("a short from 87a to the frame draws 312 A", () => {
  // 12 AWG is 5.2107 milliohm a metre. Battery 6, 4.15 m of it 21.624, fuse 10 A 7.7, contact 5 milliohm: 40.324 together.
  expect(reportOn(awningLamps).terminals["k1.87a"]!.faultA).toBeCloseTo(12.6 / 0.040324, 1);
});
