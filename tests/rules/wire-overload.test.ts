import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [plain, bundled] = failing["wire-overload"]!;
const carrying = (amps: number, main = "") =>
  circuit(
    `bat:battery > f1:fuse 15A > s1:switch >(18 AWG, 1 m${main})> r1:load amps=${amps} model=constant-current > ground`,
    s1On,
  );

test("amps over what a wire stands, with the situation", () => {
  expect(snagsOf(plain!, "wire-overload")).toMatchObject([
    { level: "stop", at: ["w3"], measure: { capacityA: 7.5, situation: "working" } },
  ]);
});

// Seven in a bundle carry half: 33 CFR 183.425 note 2.
test("a bundle carries less", () => {
  expect(snagsOf(bundled!, "wire-overload")).toMatchObject([{ at: ["w3"], measure: { capacityA: 7.5 } }]);
});

test("amps equal to the limit are within it", () => {
  expect(placesOf(carrying(10), "wire-overload")).toEqual([]);
  expect(placesOf(carrying(10.001), "wire-overload")).toEqual(["w3"]);
});

test("a main works for moments: advice", () => {
  expect(snagsOf(carrying(12, ", main=winch"), "wire-overload")).toMatchObject([{ level: "advice", at: ["w3"] }]);
});
