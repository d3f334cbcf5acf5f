import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On, volts24 } from "./failing-circuits.ts";

const [low, high, sagging] = failing["wrong-voltage"]!;
/** Nothing is lost on the way: the load gets the battery's 12.6 V. */
const straight = (load: string) =>
  circuit(
    `bat:battery 0mohm >(10 AWG, 0 m)> f1:fuse 10A milliohm=0 >(10 AWG, 0 m)> s1:switch milliohm=0 >(10 AWG, 0 m)> ${load} >(10 AWG, 0 m)> ground`,
    s1On,
  );

test("too few volts, and too many, which harm", () => {
  expect(snagsOf(low!, "wrong-voltage")).toMatchObject([{ level: "fix", at: ["la1"], measure: { minV: 18 } }]);
  expect(snagsOf(high!, "wrong-voltage")).toMatchObject([{ level: "stop", at: ["la1"], measure: { maxV: 16 } }]);
});

test("the volts left after the way count", () => {
  expect(snagsOf(sagging!, "wrong-voltage")).toMatchObject([{ level: "fix", at: ["r1"], measure: { minV: 12.2 } }]);
});

test("volts equal to a limit are within it", () => {
  expect(placesOf(straight("r1:load amps=1 model=constant-current minV=12.6 maxV=12.6"), "wrong-voltage")).toEqual([]);
  expect(placesOf(straight("r1:load amps=1 model=constant-current minV=12.601"), "wrong-voltage")).toEqual(["r1"]);
  expect(placesOf(straight("r1:load amps=1 model=constant-current maxV=12.599"), "wrong-voltage")).toEqual(["r1"]);
});

test("a load that is off is not short of volts", () => {
  expect(
    placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch > r1:load 5W minV=9 > ground"), "wrong-voltage"),
  ).toEqual([]);
});

test("a coil over what it stands", () => {
  const coil = circuit(["bat:battery 25.2V runningV=27.6 > f1:fuse 5A > s1:switch > k1:relay.86/85 > ground"], {
    ...volts24,
    ...s1On,
  });
  expect(snagsOf(coil, "wrong-voltage")).toMatchObject([
    { level: "stop", at: ["k1", "k1.86", "k1.85"], measure: { maxV: 15.75 } },
  ]);
});

test("a coil for more volts than the source has is the wrong one; one that only loses them on the way is not", () => {
  const coil = circuit("bat:battery > f1:fuse 5A > s1:switch > k1:relay.86/85 pullInV=16 > ground", s1On);
  expect(snagsOf(coil, "wrong-voltage")).toMatchObject([
    { level: "fix", at: ["k1", "k1.86", "k1.85"], measure: { minV: 16 } },
  ]);
  expect(placesOf(failing["coil-weak"]![0]!, "wrong-voltage")).toEqual([]);
});

test("a converter feeding 12 V gear on a 24 V truck is passed", () => {
  const radio = circuit(
    [
      "bat:battery 25.2V runningV=27.6 > f1:fuse 5A > u1:converter 13V 10A > s1:switch > r1:load 20W 12V maxV=15 > u1.out-",
      "u1.in- > ground",
    ],
    { ...volts24, ...s1On },
  );
  expect(placesOf(radio, "wrong-voltage")).toEqual([]);
});
