import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, feedOn } from "./failing-circuits.ts";

const [over, monitored, unstated] = failing["factory-feed-load"]!;
const adding = (amps: number) =>
  circuit(
    `ff1:feed 10A 4ohm spareA=2 monitored=no pulsed=no > r1:load amps=${amps} model=constant-current > ground`,
    feedOn,
  );

test("more than the vehicle's maker allows, what it feeds anyway not counted", () => {
  expect(snagsOf(over!, "factory-feed-load")).toMatchObject([
    { level: "fix", at: ["ff1", "la1"], measure: { spareA: 1 } },
  ]);
});

test("amps equal to the allowance are within it", () => {
  expect(placesOf(adding(2), "factory-feed-load")).toEqual([]);
  expect(placesOf(adding(2.001), "factory-feed-load")).toEqual(["ff1"]);
});

test("anything on a watched feed without an allowance, in whatever position", () => {
  expect(snagsOf(monitored!, "factory-feed-load")).toMatchObject([{ level: "fix", at: ["ff1", "la1"] }]);
  const coil = circuit(
    "ff1:feed 10A monitored=yes pulsed=no > s1:switch > k1:relay.86/85 suppression=resistor > ground",
  );
  expect(snagsOf(coil, "factory-feed-load")).toMatchObject([{ level: "fix", at: ["ff1", "k1"] }]);
});

test("an allowance nobody stated is asked for", () => {
  expect(snagsOf(unstated!, "factory-feed-load")).toMatchObject([{ level: "cant-check", at: ["ff1", "la1"] }]);
});

test("a feed with nothing on it is passed", () => {
  expect(placesOf(circuit("ff1:feed 10A monitored=yes > d1:diode"), "factory-feed-load")).toEqual([]);
});
