import { expect, test } from "vitest";
import { ownRuns } from "../../../core/papers/drawing/own-runs.ts";

test("where two wires lie on each other neither is lettered", () => {
  const shared = [
    [0, 0],
    [40, 0],
  ] as const;
  const branch = [
    [0, 0],
    [20, 0],
    [20, 30],
  ] as const;
  const [one, other] = ownRuns([shared, branch]);
  expect(one).toEqual([
    [
      [20, 0],
      [40, 0],
    ],
  ]);
  expect(other).toEqual([
    [
      [20, 0],
      [20, 30],
    ],
  ]);
});

test("a wire shared all along still has its runs", () => {
  const line = [
    [0, 0],
    [40, 0],
  ] as const;
  expect(ownRuns([line, line])).toEqual([[line], [line]]);
});

test("crossing is not sharing", () => {
  const level = [
    [0, 10],
    [40, 10],
  ] as const;
  const upright = [
    [20, 0],
    [20, 30],
  ] as const;
  expect(ownRuns([level, upright])).toEqual([[level], [upright]]);
});
