import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const [feed, wire] = failing["unmeasured"]!;

test("a feed or wire said not to be measured yet", () => {
  expect(snagsOf(feed!, "unmeasured")).toMatchObject([{ level: "cant-check", at: ["ff1"] }]);
  expect(snagsOf(wire!, "unmeasured")).toMatchObject([{ level: "cant-check", at: ["w2"] }]);
});

test("nothing said is passed: only what is known to be a guess is told", () => {
  expect(placesOf(circuit("ff1:feed 5A > la1:lamp 5W > ground"), "unmeasured")).toEqual([]);
});
