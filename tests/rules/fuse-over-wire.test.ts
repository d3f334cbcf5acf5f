import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [plain, way] = failing["fuse-over-wire"]!;

test("a thin wire behind a large fuse is named with the fuse and its source", () => {
  expect(snagsOf(plain!, "fuse-over-wire")).toMatchObject([
    { level: "stop", at: ["w3", "f1", "bat"], measure: { ratingA: 30, capacityA: 10 } },
  ]);
});

test("a way of a block is named by its terminal", () => {
  expect(snagsOf(way!, "fuse-over-wire")).toMatchObject([{ at: ["w2", "x1.1", "bat"] }]);
});

// 18 AWG carries 10 A: circuit file, "Capacity".
test("a fuse equal to what the wire stands is within it", () => {
  expect(
    placesOf(
      circuit("bat:battery > f1:fuse 10A > s1:switch >(18 AWG, 1 m)> la1:lamp 55W > ground", s1On),
      "fuse-over-wire",
    ),
  ).toEqual([]);
});

test("a wire unguarded from one source and overguarded from another gets both snags", () => {
  const both = circuit(
    [
      "bat:battery > f1:fuse 30A > j1:splice >(18 AWG, 1 m)> s1:switch > la1:lamp 21W > ground",
      "b2:battery > s2:switch > j1",
    ],
    s1On,
  );
  expect(placesOf(both, "fuse-over-wire")).toContain("w3");
  expect(placesOf(both, "no-fuse")).toContain("w3");
});
