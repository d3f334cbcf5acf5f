import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const [alike, bare] = failing["label-missing"]!;

test("wires with one number, and wires without any", () => {
  expect(snagsOf(alike!, "label-missing")).toMatchObject([{ level: "advice", at: ["w2", "w3"] }]);
  expect(snagsOf(bare!, "label-missing")).toMatchObject([{ level: "advice", at: ["w2"] }]);
});

test("all that have none are one finding, and the remedy numbers them apart", () => {
  const [snag, ...more] = snagsOf(
    circuit('bat:battery >(label="")> f1:fuse 10A >(label="")> s1:switch >(label=1)> la1:lamp 5W > ground'),
    "label-missing",
  );
  expect(snag?.at).toEqual(["w1", "w2"]);
  expect(more).toEqual([]);
  expect(snag?.remedies[0]?.edits).toMatchObject([{ change: { label: "2" } }, { change: { label: "3" } }]);
});

test("wires with numbers of their own are passed", () => {
  expect(placesOf(circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 5W > ground"), "label-missing")).toEqual(
    [],
  );
});
