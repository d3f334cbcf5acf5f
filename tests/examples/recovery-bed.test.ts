import { expect, test } from "vitest";
import { recoveryBed, recoveryBedPutRight } from "../../core/examples/recovery-bed.ts";
import { foundIn, reportOn } from "./found.ts";

test("thin cable, a small contactor, and no isolator in the main", () => {
  expect(foundIn(recoveryBed)).toEqual(
    expect.arrayContaining([
      "advice ground-drop m1",
      "advice no-fuse w2",
      "fix contact-overload k1",
      "fix drop-high m1",
    ]),
  );
  expect(reportOn(recoveryBed).snags.filter(({ level }) => level !== "advice")).toHaveLength(2);
});

test("put right, only advice on the main is left", () => {
  const kinds = reportOn(recoveryBedPutRight).snags.map(({ level, rule }) => `${level} ${rule}`);
  expect(kinds.filter((kind) => kind !== "advice no-fuse")).toEqual([]);
});

test("the winch starts with 202 A", () => {
  // 2/0 AWG is 0.2557 milliohm a metre, 4 AWG 0.8152. W1 0.102, contactor 0.4, W2 and W3 13.858, winch at standstill 50 milliohm:
  // 64.36 together behind the battery's 4. Beside it the coil, 12 ohm and 0.244 ohm of wire and switch and fuse.
  const loopOhm = 1 / (1 / 0.06436 + 1 / 12.31);
  const postV = (13.8 * loopOhm) / (loopOhm + 0.004);
  expect(reportOn(recoveryBed).situations["pulling"]!.parts["m1"]!.startAmps).toBeCloseTo(postV / 0.06436, 1);
});
