import { expect, test } from "vitest";
import type { Document } from "../../core/document/index.ts";
import { circuit } from "../support/circuit.ts";
import { snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const missing = (document: Document) =>
  snagsOf(document, "cant-check").map(({ at, measure }) => [at[0], measure["missing"]]);

test("each thing with something missing is named once, with what to enter", () => {
  expect(missing(failing["cant-check"]![0]!)).toEqual([
    ["w3", "size and length"],
    ["f1", "rating and holder's rating"],
    ["s1", "rating"],
    ["la1", "watts or amps"],
  ]);
});

test("a block is asked way by way, its spare ways not at all", () => {
  const block = circuit("bat:battery > f1:fuse 10A > x1:block 30A ways=[{},{}] > s1:switch > la1:lamp 5W > ground");
  expect(snagsOf(block, "cant-check").map(({ at }) => at)).toEqual([["x1.1", "x1"]]);
});

test.each([
  ["ff1:feed > la1:lamp 5W > ground", "ff1", "rating of its fuse"],
  ["bat:battery > f1:fuse 10A > m1:motor 30W > ground", "m1", "standstill resistance"],
  ["bat:battery > f1:fuse 10A > r1:load > ground", "r1", "resistance or watts"],
  ["bat:battery > f1:fuse 10A > p1:plug ratedA=null > la1:lamp 5W > ground", "p1", "rating"],
  ["bat:battery > f1:fuse 10A > d1:diode ratedA=null > la1:lamp 5W > ground", "d1", "rating"],
  ["bat:battery > f1:fuse 10A > la1:lamp 5W > g1:strip ratedA=null > bat.-", "g1", "rating"],
])("%s", (chain, place, what) => {
  expect(missing(circuit(chain))).toEqual([[place, what]]);
});

test("a size that is in no table is told apart", () => {
  expect(
    snagsOf(circuit("bat:battery > f1:fuse 10A >(22 AWG, 1 m)> s1:switch > la1:lamp 5W > ground"), "cant-check"),
  ).toMatchObject([{ at: ["w2"], measure: { missing: "capacity", size: "22 AWG" } }]);
});

test("a part that is only laid down, and one with everything stated, are passed", () => {
  expect(missing(circuit(["f9:fuse", "bat:battery > f1:fuse 10A > s1:switch > la1:lamp 5W > ground"]))).toEqual([]);
});
