import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const plug = (functions: string) =>
  circuit(`bat:battery > f1:fuse 10A > p1:plug functions=${functions} > s1:switch > la1:lamp 5W > ground`, s1On);

test("a way with two jobs is named with them", () => {
  expect(snagsOf(failing["plug-function"]![0]!, "plug-function")).toMatchObject([
    { level: "fix", at: ["p1", "p1.a1"], measure: { jobs: "tail and charge" } },
  ]);
});

test("one job on each way, as a text or a list, is passed", () => {
  expect(placesOf(plug('["tail","stop"]'), "plug-function")).toEqual([]);
  expect(placesOf(plug('[["tail"],["stop"]]'), "plug-function")).toEqual([]);
});

test("the second way is named as such", () => {
  expect(snagsOf(plug('["tail",["stop","charge"]]'), "plug-function").map(({ at }) => at)).toEqual([["p1", "p1.a2"]]);
});
