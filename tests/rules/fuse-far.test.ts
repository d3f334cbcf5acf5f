import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [bare, sheathed] = failing["fuse-far"]!;
const lead = (note: string) => circuit(`bat:battery >(${note})> f1:fuse 10A > s1:switch > la1:lamp 55W > ground`, s1On);

test("a lead over the limit is named with its source", () => {
  expect(snagsOf(bare!, "fuse-far")).toMatchObject([{ at: ["w1", "bat"], measure: { unguardedM: 0.4, limitM: 0.18 } }]);
  expect(snagsOf(sheathed!, "fuse-far")).toMatchObject([
    { at: ["w1", "bat"], measure: { unguardedM: 1.2, limitM: 1 } },
  ]);
});

// 0.18 m bare, 1.0 m sheathed: circuit file, "Rules every reader knows"; 33 CFR 183.455.
test.each(["10 AWG, 0.18 m", "10 AWG, 1 m, sheathed"])("a length equal to its limit is within it: %s", (note) => {
  expect(placesOf(lead(note), "fuse-far")).toEqual([]);
});

test("several wires in line are added up, and count as sheathed only if every metre is", () => {
  const inLine = (first: string, second: string) =>
    circuit(
      `bat:battery >(10 AWG, ${first})> j1:splice >(10 AWG, ${second})> f1:fuse 10A > s1:switch > la1:lamp 55W > ground`,
      s1On,
    );
  expect(placesOf(inLine("0.1 m", "0.08 m"), "fuse-far")).toEqual([]);
  expect(placesOf(inLine("0.1 m", "0.09 m"), "fuse-far")).toEqual(["w2"]);
  expect(placesOf(inLine("0.1 m", "0.5 m, sheathed"), "fuse-far")).toEqual(["w2"]);
});

test("an unknown length is asked for and not passed or failed", () => {
  expect(placesOf(lead("10 AWG, ? m"), "fuse-far")).toEqual([]);
  expect(placesOf(lead("10 AWG, ? m"), "cant-check")).toEqual(["w1"]);
});
