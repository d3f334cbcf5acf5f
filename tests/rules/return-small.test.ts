import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [wire, strip] = failing["return-small"]!;
const both = (amps: number) =>
  circuit([
    "bat:battery > f1:fuse 20A > s1:switch > r1:load amps=5 model=constant-current > g1:strip posts=4",
    `bat.+ > f2:fuse 20A > s2:switch > r2:load amps=${amps} model=constant-current > g1.3`,
    "g1.2 >(18 AWG, 0.5 m)> bat.-",
  ]);

test("a wire, or a strip, that several loads come back through, all on together", () => {
  expect(snagsOf(wire!, "return-small")).toMatchObject([
    { level: "fix", at: ["w9", "la1", "la2"], measure: { capacityA: 15 } },
  ]);
  expect(snagsOf(strip!, "return-small")).toMatchObject([{ at: ["g1", "la1", "la2"], measure: { capacityA: 10 } }]);
});

test("a sum equal to the limit is within it, although no situation has both on", () => {
  expect(placesOf(both(5), "return-small")).toEqual([]);
  expect(placesOf(both(5.001), "return-small")).toEqual(["w9"]);
});

test("a return of one load is wire-overload's affair", () => {
  expect(
    placesOf(
      circuit("bat:battery > f1:fuse 20A > s1:switch > la1:lamp 220W >(16 AWG, 0.5 m)> ground", s1On),
      "return-small",
    ),
  ).toEqual([]);
});

test("where the sum has two ways back no single one is blamed", () => {
  const ring = circuit([
    "bat:battery > f1:fuse 20A > s1:switch > la1:lamp 110W > g1:strip posts=4",
    "bat.+ > f2:fuse 20A > s2:switch > la2:lamp 110W > g1.3",
    "g1.2 >(16 AWG, 0.5 m)> bat.-",
    "g1.4 >(16 AWG, 0.5 m)> ground",
  ]);
  expect(placesOf(ring, "return-small")).toEqual([]);
});
