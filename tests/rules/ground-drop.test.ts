import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On, volts24 } from "./failing-circuits.ts";

const through = (mohm: number) =>
  circuit(
    `bat:battery > f1:fuse 10A > s1:switch > r1:load amps=1 model=constant-current >(10 AWG, 0 m)> ground ${mohm}mohm`,
    s1On,
  );

test("a load's negative above the battery's", () => {
  expect(snagsOf(failing["ground-drop"]![0]!, "ground-drop")).toMatchObject([
    { level: "advice", at: ["la1"], measure: { limitV: 0.2 } },
  ]);
});

test("volts equal to the limit are within it", () => {
  expect(placesOf(through(200), "ground-drop")).toEqual([]);
  expect(placesOf(through(201), "ground-drop")).toEqual(["r1"]);
});

test("the upper load of a 24 V string is measured from its own negative", () => {
  const upper = circuit(["b1:battery > b2:battery.-/+ > f1:fuse 10A > s1:switch > r1:load 20W 12V > b2.-"], {
    ...volts24,
    ...s1On,
  });
  expect(placesOf(upper, "ground-drop")).toEqual([]);
});
