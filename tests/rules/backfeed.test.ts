import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const tied = (trigger: string, hand: string) =>
  circuit([
    `ff1:feed 10A 3ohm spareA=2 monitored=no pulsed=no > ${trigger}j1:splice > k1:relay.86/85 suppression=resistor > ground`,
    `bat:battery > f1:fuse 10A > s1:switch > ${hand}j1`,
    "f1.2 > k1.30/87 > la1:lamp 21W > ground",
  ]);

test("two triggers tied together: the one that is off is driven, in whatever situation", () => {
  const [snag] = snagsOf(failing["backfeed"]![0]!, "backfeed");
  expect(snag).toMatchObject({ level: "fix", at: ["ff1", "ff1.out"], measure: { when: "s1 is on" } });
  expect(snag?.measure["existingA"]).toBeGreaterThan(4);
  expect(placesOf(tied("", ""), "backfeed")).toEqual(["ff1"]);
});

test("a diode in the feed keeps them apart, one in the other trigger alone does not", () => {
  expect(placesOf(tied("d1:diode > ", "d2:diode > "), "backfeed")).toEqual([]);
  expect(placesOf(tied("d1:diode > ", ""), "backfeed")).toEqual([]);
  expect(placesOf(tied("", "d2:diode > "), "backfeed")).toEqual(["ff1"]);
});

test("of two feeds tied together each drives the other", () => {
  expect(
    placesOf(circuit(["ff1:feed 5A > j1:splice > k1:relay.86/85 > ground", "ff2:feed 5A > j1"]), "backfeed"),
  ).toEqual(["ff1", "ff2"]);
});

test("a changeover between two feeds is passed", () => {
  expect(
    placesOf(
      circuit(["ff1:feed 5A > s1:changeover.1/common > la1:lamp 5W > ground", "ff2:feed 5A > s1.2"]),
      "backfeed",
    ),
  ).toEqual([]);
});
