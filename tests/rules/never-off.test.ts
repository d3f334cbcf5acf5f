import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const [lamp, relay] = failing["never-off"]!;

test("a lamp nothing turns off, and a relay whose trigger is constant", () => {
  expect(placesOf(lamp!, "never-off")).toEqual(["la1"]);
  expect(snagsOf(relay!, "never-off").map(({ at }) => at)).toEqual([["k1", "k1.86", "k1.85"]]);
});

test("a load without a switch that is meant to stay on is passed", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > r1:load 45W > ground"), "never-off")).toEqual([]);
});

test("a lamp on 87a goes off when its relay pulls in: on at rest, but not never off", () => {
  const onRest = failing["on-at-rest"]![0]!;
  expect(placesOf(onRest, "never-off")).toEqual([]);
});
