import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On, volts24 } from "./failing-circuits.ts";

const [bare, link, main] = failing["no-fuse"]!;

test("every live wire without a device is named with the source behind it", () => {
  expect(snagsOf(bare!, "no-fuse").map(({ at, level }) => [level, ...at])).toEqual([
    ["stop", "w1", "bat"],
    ["stop", "w2", "bat"],
  ]);
});

test("a link fused at one end names the source at the other", () => {
  expect(snagsOf(link!, "no-fuse").map(({ at }) => at)).toEqual([
    ["w2", "b2"],
    ["w3", "b2"],
  ]);
});

test("a link fused at both ends is passed", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 30A > s1:switch > f2:fuse 30A > b2:battery.+"), "no-fuse")).toEqual(
    [],
  );
});

test("a main without a fuse by design asks for an isolator, and is content with one", () => {
  expect(snagsOf(main!, "no-fuse")).toMatchObject([{ level: "advice", at: ["w1", "bat"] }]);
  const isolated = circuit("bat:battery >(main=winch)> s1:switch >(main=winch)> m1:motor 300W startOhm=0.02 > ground");
  expect(placesOf(isolated, "no-fuse")).toEqual([]);
});

test("a wire that only leads to its first fuse is not judged here", () => {
  expect(
    placesOf(circuit("bat:battery >(10 AWG, 5 m)> f1:fuse 10A > s1:switch > la1:lamp 55W > ground", s1On), "no-fuse"),
  ).toEqual([]);
});

test("the wire between two batteries in series is exempt", () => {
  const string = circuit("b1:battery > b2:battery > f1:fuse 10A > s1:switch > la1:lamp 55W 24V > ground", {
    ...volts24,
    ...s1On,
  });
  expect(placesOf(string, "no-fuse")).toEqual([]);
});
