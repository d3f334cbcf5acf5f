import { expect, test } from "vitest";
import { legend } from "../../core/papers/legend.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { campervan } from "./support/campervan.ts";
import { said } from "./support/said.ts";
import { sourceOf } from "./support/source.ts";

test("each fuse says what it feeds, its rating, the largest spare and when it is hot", () => {
  expect(said(legend, sourceOf(awningLamps))).toMatch(
    /F1 Lamps\nK1 Lamp relay, LA1 Awning left, LA2 Awning right\n15 A blue\n15 A\nalways/,
  );
});

test("each way of a block has a line of its own, an empty one too", () => {
  const text = said(legend, sourceOf(campervan));
  expect(text).toMatch(/BLK Block · 1\n[^\n]*FR Fridge/);
  expect(text).toContain("5 A tan, not fitted");
});

test("a changeover relay says what its resting contact is at", () => {
  expect(said(legend, sourceOf(awningLamps))).toMatch(
    /K1 Lamp relay\nchangeover, 5 pins\n87: 30 A, 87a: 20 A\n87a LIVE at rest, bare/,
  );
  expect(said(legend, sourceOf(campervan))).toMatch(/K1 Reverse lamp\nmake contact, 4 pins\n87: 30 A\nnone/);
});

test("a fuse bigger than its wires allow is called out", () => {
  const parts = awningLamps.parts.map((part) => (part.id === "f1" ? { ...part, props: { ratingA: 30 } } : part));
  // 16 AWG carries 15 A by the vehicle table (field practice: one maker's 40 °C table).
  expect(said(legend, sourceOf({ ...awningLamps, parts }))).toMatch(/30 A green\n15 A: TOO BIG AS\s?\n?DRAWN/);
});

test("where a guarded wire's size is unknown, no spare is promised", () => {
  const wires = awningLamps.wires.map(({ size, ...wire }) =>
    wire.id === "w4" ? wire : { ...wire, ...(size ? { size } : {}) },
  );
  expect(said(legend, sourceOf({ ...awningLamps, wires }))).toMatch(/15 A blue\nnot known/);
});
