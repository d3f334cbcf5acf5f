import { expect, test } from "vitest";
import { crimpSheet } from "../../core/papers/crimp-sheet.ts";
import { jointRows } from "../../core/papers/lists/index.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { campervan } from "./support/campervan.ts";
import { said } from "./support/said.ts";
import { sourceOf } from "./support/source.ts";

const joints = jointRows(sourceOf(awningLamps));
const jointAt = (place: string) => joints.find((joint) => joint.place.replaceAll("\u00a0", " ") === place)!;

test("wires that share a blade share a barrel chosen for their copper together", () => {
  const joint = jointAt("F1 Lamps · 2");
  expect(joint.wires.map(({ wire }) => wire.id)).toEqual(["w2", "w3"]);
  // 12 AWG and 16 AWG: 3.31 and 1.31 mm² (ASTM B258), together a yellow barrel.
  expect(joint.totalMm2).toBeCloseTo(4.62, 2);
  expect(joint.barrel).toBe("yellow (12-10 AWG)");
});

test("its pull is that of the thinnest wire in it", () => {
  // 16 AWG: 30 lbf, 133.5 N (terminal makers' application specifications, values as in UL 486A).
  expect(jointAt("F1 Lamps · 2").pull).toEqual({ minN: 133.5, lbf: 30 });
});

test("each wire on a stud has a ring of its own", () => {
  expect(
    joints.filter(({ place }) => place.startsWith("G1")).map(({ wires, terminal }) => [wires.length, terminal]),
  ).toEqual([
    [1, "ring"],
    [1, "ring"],
  ]);
});

test("an unknown size asks for no barrel and promises no pull", () => {
  const joint = jointRows(sourceOf(campervan)).find(({ wires }) => wires.some(({ wire }) => wire.id === "w14"))!;
  expect([joint.totalMm2, joint.barrel, joint.pull]).toEqual([null, "size not stated", null]);
});

test("a stated barrel that does not fit is called out", () => {
  const ends = { from: { barrel: "red" } };
  const wrong = {
    ...awningLamps,
    wires: awningLamps.wires.map((wire) => (wire.id === "w1" ? { ...wire, ends } : wire)),
  };
  expect(said(crimpSheet, sourceOf(wrong)).replaceAll("\n", " ")).toMatch(/red: DOES NOT FIT/);
});
