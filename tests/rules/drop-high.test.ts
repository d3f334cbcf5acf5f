import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [caution, fault] = failing["drop-high"]!;
/** One ampere over so many milliohms, from 12 V. */
const losing = (mohm: number, system = {}) =>
  circuit(
    `bat:battery 12V ${mohm}mohm >(10 AWG, 0 m)> f1:fuse 10A milliohm=0 >(10 AWG, 0 m)> s1:switch milliohm=0 >(10 AWG, 0 m)> r1:load amps=1 model=constant-current >(10 AWG, 0 m)> ground`,
    { ...s1On, system },
  );

test("over the caution limit is advice, over the fault limit to be put right", () => {
  expect(snagsOf(caution!, "drop-high")).toMatchObject([
    { level: "advice", at: ["la1"], measure: { limitPercent: 5 } },
  ]);
  expect(snagsOf(fault!, "drop-high")).toMatchObject([{ level: "fix", at: ["la1"], measure: { limitPercent: 10 } }]);
});

test("a loss equal to a limit is within it", () => {
  expect(placesOf(losing(600), "drop-high")).toEqual([]);
  expect(snagsOf(losing(601), "drop-high")).toMatchObject([{ level: "advice" }]);
  expect(snagsOf(losing(1200), "drop-high")).toMatchObject([{ level: "advice" }]);
  expect(snagsOf(losing(1201), "drop-high")).toMatchObject([{ level: "fix" }]);
});

test("the limits can be chosen", () => {
  expect(snagsOf(losing(600, { cautionDropPercent: 3 }), "drop-high")).toMatchObject([
    { level: "advice", measure: { limitPercent: 3 } },
  ]);
});

test("feed and return count together", () => {
  const half = ">(16 AWG, 6 m)>";
  const shared = circuit(`bat:battery > f1:fuse 10A > s1:switch ${half} la1:lamp 55W ${half} ground`, s1On);
  expect(placesOf(shared, "drop-high")).toEqual(["la1"]);
});
