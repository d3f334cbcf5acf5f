import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const through = (amps: number) =>
  circuit(
    `bat:battery > f1:fuse 10A > p1:plug 5A > s1:switch > r1:load amps=${amps} model=constant-current > p1.b2/a2 > ground`,
    s1On,
  );

test("a way over what a contact stands is named", () => {
  expect(snagsOf(failing["plug-overload"]![0]!, "plug-overload")).toMatchObject([
    { level: "fix", at: ["p1", "p1.a1"], measure: { ratedA: 5 } },
  ]);
});

test("amps equal to the rating are within it; the return counts too", () => {
  expect(placesOf(through(5), "plug-overload")).toEqual([]);
  expect(snagsOf(through(5.001), "plug-overload").map(({ at }) => at)).toEqual([
    ["p1", "p1.a1"],
    ["p1", "p1.a2"],
  ]);
});
