import { expect, test } from "vitest";
import { labels } from "../../core/papers/labels.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { said } from "./support/said.ts";
import { a5, sourceOf } from "./support/source.ts";

test("there are two for every wire, with id, circuit and both ends", () => {
  const lines = labels.make(sourceOf(awningLamps), a5).split("\n");
  expect(lines.pop()).toBe("");
  expect(lines).toHaveLength(2 * awningLamps.wires.length);
  expect(lines.filter((line) => line === "w3 L3 | F1 Lamps | F1 2 > S1 1")).toHaveLength(2);
  expect(lines.filter((line) => line === "w8 | LA1 - > GS 2")).toHaveLength(2);
});

test("a label typed over several lines stays one line of three fields", () => {
  const wires = awningLamps.wires.map((wire) => ({ ...wire, label: "one\ntwo | three" }));
  const lines = labels.make(sourceOf({ ...awningLamps, wires }), a5).split("\n");
  expect(lines).toHaveLength(2 * wires.length + 1);
  expect(lines[2]).toBe("w2 one two / three | F1 Lamps | F1 2 > K1 30");
});

test("each printed flag says the same on both halves", () => {
  const text = said(labels, sourceOf(awningLamps)).split("\n");
  expect(text.filter((line) => line === "w3 L3")).toHaveLength(4);
  expect(text.filter((line) => line === "F1 2 > S1 1")).toHaveLength(4);
});
