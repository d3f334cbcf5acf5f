import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [unattended] = failing["auto-reset"]!;
const behind = (text: string) => circuit(`bat:battery > q1:breaker 10A reset=auto > ${text} > ground`, s1On);

test("a breaker that closes again into something nobody watches", () => {
  expect(snagsOf(unattended!, "auto-reset")).toMatchObject([{ level: "advice", at: ["q1", "la1"] }]);
});

test("one that stays open is passed", () => {
  const held = circuit("bat:battery > q1:breaker 10A reset=manual > s1:switch > la1:lamp 55W > ground", s1On);
  expect(placesOf(held, "auto-reset")).toEqual([]);
});

test("what is held on by hand, or runs for moments, has somebody watching", () => {
  expect(placesOf(behind("s1:switch momentary=true > la1:lamp 55W"), "auto-reset")).toEqual([]);
  expect(placesOf(behind("s1:switch > r1:load 55W continuous=false"), "auto-reset")).toEqual([]);
});
