import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const [live, dead] = failing["loose-end"]!;

test("a wire to a joint with nothing else on it, worse where it can be live", () => {
  expect(snagsOf(live!, "loose-end")).toMatchObject([{ level: "fix", at: ["j1.s", "w5"], measure: { hot: "always" } }]);
  expect(snagsOf(dead!, "loose-end")).toMatchObject([
    { level: "advice", at: ["j1.s", "w6"], measure: { hot: "never" } },
  ]);
});

test("a wire to a switch or fuse with nothing behind it", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch"), "loose-end")).toEqual(["s1.1"]);
});

test("a half of a plug may wait for the other", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > p1:plug.a1"), "loose-end")).toEqual([]);
});

test("a load without a return is no-return's affair", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > la1:lamp 5W"), "loose-end")).toEqual([]);
});

test("a finished circuit is passed", () => {
  expect(
    placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 5W > g1:strip > bat.-"), "loose-end"),
  ).toEqual([]);
});
