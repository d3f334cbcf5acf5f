import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [electronics, led] = failing["reverse-volts"]!;

test("electronics fed backwards are harmed, an LED lamp stays dark", () => {
  expect(snagsOf(electronics!, "reverse-volts")).toMatchObject([{ level: "stop", at: ["r1", "r1.+"] }]);
  expect(snagsOf(led!, "reverse-volts")).toMatchObject([{ level: "fix", at: ["la1", "la1.+"] }]);
});

test("what does not mind its polarity is passed", () => {
  expect(
    placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp.-/+ 21W > ground", s1On), "reverse-volts"),
  ).toEqual([]);
  expect(
    placesOf(
      circuit("bat:battery > f1:fuse 10A > s1:switch > r1:load.-/+ 21W polarised=false > ground", s1On),
      "reverse-volts",
    ),
  ).toEqual([]);
});

test("a resistance said to mind its polarity is told, although it conducts", () => {
  expect(
    placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch > r1:load.-/+ 21W > ground", s1On), "reverse-volts"),
  ).toEqual(["r1"]);
});
