import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On, volts24 } from "./failing-circuits.ts";

test("a load on the middle of a pair is named with the battery it drains", () => {
  expect(snagsOf(failing["mid-tap"]![0]!, "mid-tap")).toMatchObject([{ level: "fix", at: ["la2", "b1.+"] }]);
});

test("a converter on the whole string, and one 12 V battery, are passed", () => {
  const converter = circuit(
    [
      "b1:battery > b2:battery.-/+ > f1:fuse 10A > u1:converter 12V 10A > s1:switch > r1:load 20W 12V > u1.out-",
      "u1.in- > ground",
    ],
    { ...volts24, ...s1On },
  );
  expect(placesOf(converter, "mid-tap")).toEqual([]);
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 55W > ground", s1On), "mid-tap")).toEqual(
    [],
  );
});
