import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const onPost = (count: number, note = "") =>
  circuit(
    Array.from(
      { length: count },
      (_, at) => `${at === 0 ? "bat:battery" : "bat.+"} >${note ? `(${note})>` : ""} f${at + 1}:fuse 10A`,
    ),
  );

test("three rings on a ground screw", () => {
  expect(snagsOf(failing["stud-crowded"]![0]!, "stud-crowded")).toMatchObject([
    { level: "fix", at: ["g1.g", "w4", "w6", "w8"], measure: { rings: 3, mostRings: 2 } },
  ]);
});

test("four rings on a stud are within the limit, five are not", () => {
  expect(placesOf(onPost(4), "stud-crowded")).toEqual([]);
  expect(placesOf(onPost(5), "stud-crowded")).toEqual(["bat.+"]);
});

test("only rings count", () => {
  expect(placesOf(onPost(5, 'ends={"from":{"terminal":"clamp"}}'), "stud-crowded")).toEqual([]);
});

test("a splice takes any number", () => {
  const joint = circuit([
    "bat:battery > f1:fuse 10A > j1:splice",
    "j1 > s1:switch",
    "j1 > s2:switch",
    "j1 > s3:switch",
    "j1 > s4:switch",
  ]);
  expect(placesOf(joint, "stud-crowded")).toEqual([]);
});
