import { expect, test } from "vitest";
import { recoveryBed, recoveryBedPutRight } from "../../core/examples/recovery-bed.ts";
import { foundIn, reportOn } from "./found.ts";

test("thin cable, a small contactor, and no isolator in the main", () => {
  expect(foundIn(recoveryBed)).toEqual([
    "advice ground-drop m1",
    "advice no-fuse w1",
    "advice no-fuse w2",
    "fix contact-overload k1",
    "fix drop-high m1",
  ]);
});

test("put right, nothing is left to say", () => {
  expect(foundIn(recoveryBedPutRight)).toEqual([]);
});

test("the winch starts with 202 A", () => {
  // 2/0 AWG is 0.2557 milliohm a metre, 4 AWG 0.8152. W1 0.102, contactor 0.4, W2 and W3 13.858, winch at standstill 50 milliohm:
  // 64.36 together behind the battery's 4. Beside it the coil, 12 ohm and 0.244 ohm of wire and switch and fuse.
  const loopOhm = 1 / (1 / 0.06436 + 1 / 12.31);
  const postV = (13.8 * loopOhm) / (loopOhm + 0.004);
  expect(reportOn(recoveryBed).situations["pulling"]!.parts["m1"]!.startAmps).toBeCloseTo(postV / 0.06436, 1);
});
