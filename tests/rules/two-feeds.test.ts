import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

test("two fuses on one wire: wires first, then what feeds them", () => {
  expect(snagsOf(failing["two-feeds"]![0]!, "two-feeds")).toMatchObject([
    { level: "advice", at: ["w2", "w3", "w4", "w7", "f1", "f2"] },
  ]);
});

test("a link between two batteries with a fuse at each end is meant so", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 30A > s1:switch > f2:fuse 30A > b2:battery.+"), "two-feeds")).toEqual(
    [],
  );
});

test("triggers kept apart by diodes, and a changeover, are passed", () => {
  const diodes = circuit([
    "ff1:feed 5A > d1:diode > j1:splice > k1:relay.86/85 > ground",
    "ff2:feed 5A > d2:diode > j1",
  ]);
  expect(placesOf(diodes, "two-feeds")).toEqual([]);
  const changeover = circuit([
    "bat:battery > f1:fuse 5A > s1:changeover.1/common > la1:lamp 5W > ground",
    "bat.+ > f2:fuse 5A > s1.2",
  ]);
  expect(placesOf(changeover, "two-feeds")).toEqual([]);
});

test("two feeds tied together without diodes", () => {
  expect(
    placesOf(circuit(["ff1:feed 5A > j1:splice > k1:relay.86/85 > ground", "ff2:feed 5A > j1"]), "two-feeds"),
  ).toHaveLength(1);
});
