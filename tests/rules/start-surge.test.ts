import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [fuse, sag, unstated] = failing["start-surge"]!;
const starting = (startA: number, startS: number) =>
  circuit(
    `bat:battery > f1:fuse 10A > s1:switch > r1:load amps=2 model=constant-current startA=${startA} startS=${startS} > ground`,
    s1On,
  );

test("a start that may blow the fuse is named with it", () => {
  expect(snagsOf(fuse!, "start-surge")).toMatchObject([
    { level: "fix", at: ["m1", "f1"], measure: { ratingA: 10, startS: 0.5 } },
  ]);
});

test("a start with too few volts", () => {
  expect(snagsOf(sag!, "start-surge")).toMatchObject([{ level: "fix", at: ["m1"], measure: { minV: 10.5 } }]);
});

test("how long the start lasts is asked for where it decides", () => {
  expect(snagsOf(unstated!, "start-surge")).toMatchObject([{ level: "cant-check", at: ["m1", "f1"] }]);
});

// A medium blade fuse carries 200 % for 0.15 s and 135 % for 0.75 s at least: maker's data sheet, series 287.
test.each([
  [20, 0.15, []],
  [20, 0.16, ["r1"]],
  [13.5, 0.75, []],
  [13.6, 0.75, ["r1"]],
  [10, 3600, []],
])("a 10 A fuse with %s A for %s s", (startA, startS, places) => {
  expect(placesOf(starting(startA, startS), "start-surge")).toEqual(places);
});
