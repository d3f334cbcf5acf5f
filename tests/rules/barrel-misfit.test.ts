import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const [joint, crimp] = failing["barrel-misfit"]!;
const spliced = (barrel: string, ...sizes: string[]) =>
  circuit([
    "bat:battery > f1:fuse 10A",
    ...sizes.map(
      (size, at) =>
        `${at === 0 ? "f1.2" : "la1:lamp".repeat(0) + `s${at}:switch`} >(${size}, 1 m)> j1${at === 0 ? `:splice barrel=${barrel}` : ""}`,
    ),
  ]);

test("a splice by the copper of all its wires, a terminal by its own", () => {
  expect(snagsOf(joint!, "barrel-misfit")).toMatchObject([
    { level: "fix", at: ["j1", "w2", "w3"], measure: { barrel: "blue" } },
  ]);
  expect(snagsOf(crimp!, "barrel-misfit")).toMatchObject([{ at: ["w3", "la1.+"], measure: { barrel: "red" } }]);
});

// Blue takes up to 2.5 mm2, yellow up to 6: terminal makers' pages.
test.each([
  ["blue", ["1 mm2", "1.5 mm2"], []],
  ["blue", ["1.5 mm2", "1.5 mm2"], ["j1"]],
  ["yellow", ["2.5 mm2", "2.5 mm2"], []],
  ["yellow", ["4 mm2", "2.5 mm2"], ["j1"]],
  ["4-6", ["2.5 mm2", "1.5 mm2"], []],
])("%s with %j", (barrel, sizes, places) => {
  expect(placesOf(spliced(barrel, ...sizes), "barrel-misfit")).toEqual(places);
});

test("a splice without a stated barrel is passed", () => {
  expect(
    placesOf(circuit("bat:battery > f1:fuse 10A > j1:splice > s1:switch > la1:lamp 5W > ground"), "barrel-misfit"),
  ).toEqual([]);
});

test("rings for two different studs on one terminal", () => {
  const rings = circuit([
    'bat:battery >(ends={"from":{"stud":"M8"}})> f1:fuse 10A',
    'bat.+ >(ends={"from":{"stud":"M6"}})> f2:fuse 10A',
  ]);
  expect(placesOf(rings, "barrel-misfit")).toEqual(["bat.+"]);
});
