import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

/** The coil gets just these volts. */
const fed = (volts: number) =>
  circuit(
    `bat:battery ${volts}V 0mohm >(10 AWG, 0 m)> f1:fuse 5A milliohm=0 >(10 AWG, 0 m)> s1:switch milliohm=0 >(10 AWG, 0 m)> k1:relay.86/85 >(10 AWG, 0 m)> ground`,
    s1On,
  );

test("a coil at the end of a thin wire", () => {
  expect(snagsOf(failing["coil-weak"]![0]!, "coil-weak")).toMatchObject([
    { level: "fix", at: ["k1", "k1.86", "k1.85"], measure: { pullInV: 7.5, wantedV: 8.25, situation: "working" } },
  ]);
});

// 1.1 times the rated operate volts: California DOT equipment standard, section 8.3.
test("volts equal to pull-in plus a tenth are enough", () => {
  expect(placesOf(fed(8.25), "coil-weak")).toEqual([]);
  expect(placesOf(fed(8.24), "coil-weak")).toEqual(["k1"]);
  expect(placesOf(fed(5), "coil-weak")).toEqual(["k1"]);
});

test("a coil that is off is passed", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 5A > s1:switch > k1:relay.86/85 > ground"), "coil-weak")).toEqual([]);
});
