import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [restContact, plain] = failing["on-at-rest"]!;

test("a lamp on 87a, and one with no switch at all", () => {
  expect(snagsOf(restContact!, "on-at-rest")).toMatchObject([{ level: "fix", at: ["la1"] }]);
  expect(placesOf(plain!, "on-at-rest")).toEqual(["la1"]);
});

test("a load that may be on at rest is passed", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > r1:load 45W > ground"), "on-at-rest")).toEqual([]);
  expect(
    placesOf(circuit("bat:battery > f1:fuse 10A > la1:lamp 5W mustBeOffAtRest=false > ground"), "on-at-rest"),
  ).toEqual([]);
});

test("a lamp behind its switch is passed", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 5W > ground", s1On), "on-at-rest")).toEqual(
    [],
  );
});
