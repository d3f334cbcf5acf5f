import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const drawing = (amps: number, more = "", percent = 70) =>
  circuit(`bat:battery > f1:fuse 10A > s1:switch > r1:load amps=${amps} model=constant-current ${more} > ground`, {
    ...s1On,
    system: { fuseLoadPercent: percent },
  });

test("continuous amps over 70 % of the rating", () => {
  expect(snagsOf(failing["fuse-loaded"]![0]!, "fuse-loaded")).toMatchObject([
    { level: "fix", at: ["f1"], measure: { ratingA: 10, limitPercent: 70, situation: "working" } },
  ]);
});

test("amps equal to the limit are within it, and the limit can be chosen", () => {
  expect(placesOf(drawing(7), "fuse-loaded")).toEqual([]);
  expect(placesOf(drawing(7.001), "fuse-loaded")).toEqual(["f1"]);
  expect(placesOf(drawing(7, "", 60), "fuse-loaded")).toEqual(["f1"]);
  expect(placesOf(drawing(8, "", 80), "fuse-loaded")).toEqual([]);
});

test("what runs for moments does not count", () => {
  expect(placesOf(drawing(9, "continuous=false"), "fuse-loaded")).toEqual([]);
  const both = circuit(
    [
      "bat:battery > f1:fuse 10A > s1:switch > r1:load amps=5 model=constant-current continuous=false > ground",
      "s1.2 > r2:load amps=4 model=constant-current > ground",
    ],
    s1On,
  );
  expect(placesOf(both, "fuse-loaded")).toEqual([]);
});

test("a way of a block is named by its terminal", () => {
  const block = circuit(
    'bat:battery > f1:fuse 30A > x1:block ways=[{"ratingA":5},{}] > s1:switch > la1:lamp 55W > ground',
    s1On,
  );
  expect(snagsOf(block, "fuse-loaded").map(({ at }) => at)).toEqual([["x1.1", "x1"]]);
});
