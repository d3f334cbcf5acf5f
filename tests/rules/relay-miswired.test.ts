import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const [dead, stuck] = failing["relay-miswired"]!;

test("a coil that never gets volts, and one that never loses them", () => {
  expect(snagsOf(dead!, "relay-miswired")).toMatchObject([
    { at: ["k1", "k1.86", "k1.85"], measure: { stuck: "released" } },
  ]);
  expect(snagsOf(stuck!, "relay-miswired")).toMatchObject([
    { at: ["k1", "k1.86", "k1.85"], measure: { stuck: "pulled-in" } },
  ]);
});

test("both ends of the coil on one wire can never switch", () => {
  expect(
    placesOf(
      circuit([
        "bat:battery > f1:fuse 5A > s1:switch > k1:relay.86/85 > j1:splice",
        "s1.2 > j1",
        "f1.2 > k1.30/87 > la1:lamp 5W > ground",
      ]),
      "relay-miswired",
    ),
  ).toEqual(["k1"]);
});

test("a relay some control works is passed, also when no situation does it", () => {
  expect(
    placesOf(
      circuit([
        "bat:battery > f1:fuse 5A > s1:switch > k1:relay.86/85 > ground",
        "f1.2 > k1.30/87 > la1:lamp 5W > ground",
      ]),
      "relay-miswired",
    ),
  ).toEqual([]);
});

test("a relay that is only laid down is passed", () => {
  expect(placesOf(circuit(["k1:relay"]), "relay-miswired")).toEqual([]);
});
