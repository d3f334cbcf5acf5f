import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [hand, start, relay] = failing["contact-overload"]!;
const drawing = (amps: number) =>
  circuit(`bat:battery > f1:fuse 10A > s1:switch 5A > r1:load amps=${amps} model=constant-current > ground`, s1On);

test("a switch over its rating, running or while a motor starts", () => {
  expect(snagsOf(hand!, "contact-overload")).toMatchObject([
    { at: ["s1", "s1.2"], measure: { ratedA: 5, starting: null } },
  ]);
  expect(snagsOf(start!, "contact-overload")).toMatchObject([
    { at: ["s1", "s1.2"], measure: { ratedA: 20, starting: "m1" } },
  ]);
});

test("a relay's contact is named by its terminal", () => {
  expect(snagsOf(relay!, "contact-overload")).toMatchObject([{ at: ["k1", "k1.87"], measure: { ratedA: 10 } }]);
});

test("amps equal to the rating are within it", () => {
  expect(placesOf(drawing(5), "contact-overload")).toEqual([]);
  expect(placesOf(drawing(5.001), "contact-overload")).toEqual(["s1"]);
});
