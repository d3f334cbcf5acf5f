import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const [missing, painted, unknown] = failing["no-return"]!;

test("a load that is fed and leads nowhere", () => {
  expect(snagsOf(missing!, "no-return")).toMatchObject([{ level: "fix", at: ["la1", "la1.-"] }]);
});

test("a return through paint, or through metal nobody looked at", () => {
  expect(snagsOf(painted!, "no-return")).toMatchObject([{ level: "fix", at: ["g1", "w4"] }]);
  expect(snagsOf(unknown!, "no-return")).toMatchObject([{ level: "cant-check", at: ["g1", "w4"] }]);
});

test("loads that share a strip without a way back are each told", () => {
  const strip = circuit([
    "bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W > g1:strip",
    "f1.2 > s2:switch > la2:lamp 21W > g1.2",
  ]);
  expect(placesOf(strip, "no-return")).toEqual(["la1", "la2"]);
});

test("chassis return, returns through a switch and loads in a string are passed", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > la1:lamp 21W > s1:switch > ground"), "no-return")).toEqual([]);
  expect(
    placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W > la2:lamp 21W > ground"), "no-return"),
  ).toEqual([]);
});

test("a load with nothing on it yet is passed", () => {
  expect(placesOf(circuit(["la1:lamp 5W", "bat:battery > f1:fuse 10A"]), "no-return")).toEqual([]);
});
