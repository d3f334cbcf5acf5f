import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, feedOn } from "./failing-circuits.ts";

const [led, unknown] = failing["pulsed-trigger"]!;

test("an LED or a coil on a pulsed feed", () => {
  expect(snagsOf(led!, "pulsed-trigger")).toMatchObject([{ level: "fix", at: ["la1", "ff1"] }]);
});

test("whether it is pulsed is asked for where it matters", () => {
  expect(snagsOf(unknown!, "pulsed-trigger")).toMatchObject([{ level: "cant-check", at: ["k1", "ff1"] }]);
});

test("a filament lamp only dims, and a steady feed is passed", () => {
  expect(
    placesOf(circuit("ff1:feed 10A spareA=5 monitored=no pulsed=yes > la1:lamp 5W > ground", feedOn), "pulsed-trigger"),
  ).toEqual([]);
  expect(
    placesOf(circuit("ff1:feed 10A spareA=5 monitored=no pulsed=no > la1:led 5W > ground", feedOn), "pulsed-trigger"),
  ).toEqual([]);
});
