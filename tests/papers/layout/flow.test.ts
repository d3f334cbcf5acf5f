import { expect, test } from "vitest";
import { flow, type Block, type Strip } from "../../../core/papers/layout/index.ts";

const box = { left: 0, top: 10, right: 100, bottom: 40 };
const strip = (name: string, heightMm: number, keepWithNext = false): Strip => ({
  heightMm,
  keepWithNext,
  draw: (_x, y) => [`${name}@${y}`],
});
const block = (...strips: Strip[]): Block => ({ strips });

test("strips follow each other and go on to the next page when one no longer fits", () => {
  expect(flow([block(strip("a", 10), strip("b", 20), strip("c", 1))], box)).toEqual([["a@10", "b@20"], ["c@10"]]);
});

test("a heading is never left alone at the foot", () => {
  expect(flow([block(strip("a", 20)), block(strip("heading", 5, true)), block(strip("b", 10))], box)).toEqual([
    ["a@10"],
    ["heading@10", "b@15"],
  ]);
});

test("a table's head comes again on each page it runs on to", () => {
  const table: Block = { head: strip("head", 5), strips: [strip("a", 20), strip("b", 20)] };
  expect(flow([table], box)).toEqual([
    ["head@10", "a@15"],
    ["head@10", "b@15"],
  ]);
});

test("a first page with little room left is left, not overfilled", () => {
  expect(flow([block(strip("a", 10))], box, { ...box, top: 35 })).toEqual([[], ["a@10"]]);
});

test("a strip taller than a page has one to itself", () => {
  expect(flow([block(strip("a", 5), strip("giant", 90), strip("b", 5))], box)).toEqual([
    ["a@10"],
    ["giant@10"],
    ["b@10"],
  ]);
});
