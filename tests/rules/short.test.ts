import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, volts24 } from "./failing-circuits.ts";

const [shorted, contradictory] = failing["short"]!;

test("a source shorted in some position, in a situation or not", () => {
  expect(snagsOf(shorted!, "short")).toMatchObject([
    { level: "stop", at: ["bat", "w1", "w2", "w3"], measure: { when: "s1 is on" } },
  ]);
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch > s2:switch > ground"), "short")).toEqual(["bat"]);
});

test("ideal sources that can't both be right", () => {
  expect(snagsOf(contradictory!, "short")).toMatchObject([
    { level: "stop", at: ["b1", "b2"], measure: { why: "contradictory" } },
  ]);
});

test("a feed wired to the chassis, and a shorted converter", () => {
  expect(placesOf(circuit("ff1:feed 5A > s1:switch > ground"), "short")).toEqual(["ff1"]);
  expect(
    placesOf(
      circuit(["bat:battery > f1:fuse 10A > u1:converter 12V 5A > s1:switch > u1.out-", "u1.in- > ground"]),
      "short",
    ),
  ).toEqual(["u1"]);
});

test("a series string, a load, and a switch that can't be closed together with the other are passed", () => {
  expect(
    placesOf(circuit("b1:battery > b2:battery > f1:fuse 10A > la1:lamp 5W 24V > ground", volts24), "short"),
  ).toEqual([]);
  const reversing = circuit([
    "bat:battery > f1:fuse 10A > s1:changeover.1/common > m1:motor 30W > s2:changeover.common/2 > ground",
    "f1.2 > s2.1",
    "s1.2 > ground",
  ]);
  expect(placesOf(reversing, "short")).toEqual([]);
});
