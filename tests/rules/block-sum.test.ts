import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const block = (amps: number, more: string) =>
  circuit(
    [
      `bat:battery > f1:fuse 30A > x1:block ${more} ways=[{"ratingA":15},{"ratingA":15}] > s1:switch > r1:load amps=5 model=constant-current > ground`,
      `x1.2 > s2:switch > r2:load amps=${amps} model=constant-current > ground`,
    ],
    { situations: { one: { s1: "on" }, both: { s1: "on", s2: "on" } } },
  );

test("what a block hands out in the worst situation", () => {
  expect(snagsOf(failing["block-sum"]![0]!, "block-sum")).toMatchObject([
    { level: "fix", at: ["x1"], measure: { limitA: 15, situation: "both" } },
  ]);
});

test("a sum equal to the rating is within it", () => {
  expect(placesOf(block(5, "10A"), "block-sum")).toEqual([]);
  expect(placesOf(block(5.001, "10A"), "block-sum")).toEqual(["x1"]);
});

test("the fuse ahead counts as well", () => {
  const [snag] = snagsOf(block(26, "100A"), "block-sum");
  expect(snag).toMatchObject({ at: ["x1", "w2", "f1"], measure: { limitA: 30 } });
});

test("a feed bar passes on what its wires take", () => {
  const bar = circuit(
    [
      "bat:battery > f1:fuse 30A > x1:bus 8A posts=4 > s1:switch > r1:load amps=5 model=constant-current > ground",
      "x1.3 > s2:switch > r2:load amps=4 model=constant-current > ground",
    ],
    { situations: { both: { s1: "on", s2: "on" } } },
  );
  expect(snagsOf(bar, "block-sum")).toMatchObject([{ at: ["x1"], measure: { limitA: 8 } }]);
});
