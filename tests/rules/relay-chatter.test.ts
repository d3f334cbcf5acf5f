import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

test("a relay that breaks its own feed", () => {
  expect(snagsOf(failing["relay-chatter"]![0]!, "relay-chatter")).toMatchObject([
    { level: "stop", at: ["k1", "k1.86", "k1.85"], measure: { when: "everything is at rest" } },
  ]);
});

test("only the relay that does so is named", () => {
  const two = circuit([
    "bat:battery > f1:fuse 10A > s1:switch > k1:relay.30/87a contact=changeover > k1.86",
    "k1.85 > ground",
    "f1.2 > s2:switch > k2:relay.86/85 > ground",
  ]);
  expect(snagsOf(two, "relay-chatter")).toMatchObject([
    { at: ["k1", "k1.86", "k1.85"], measure: { when: "s1 is on" } },
  ]);
});

test("a relay that holds itself in is passed", () => {
  const holding = circuit([
    "bat:battery > f1:fuse 10A > s1:switch momentary=true > k1:relay.86/85 > ground",
    "f1.2 > k1.30/87 > k1.86",
  ]);
  expect(placesOf(holding, "relay-chatter")).toEqual([]);
});
