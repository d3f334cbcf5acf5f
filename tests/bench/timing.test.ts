import { describe, expect, it } from "vitest";
import { spread, timed } from "./timing.ts";

describe("timing", () => {
  it("sorts times as numbers and takes the middle", () => {
    expect(spread([100, 9, 20])).toEqual({ least: 9, median: 20 });
    expect(spread([4, 1, 3, 2])).toEqual({ least: 1, median: 2.5 });
    expect(spread([7])).toEqual({ least: 7, median: 7 });
  });

  it("runs tasks turn and turn about and leaves the first round out", () => {
    const order: string[] = [];
    const result = timed({ a: () => void order.push("a"), b: () => void order.push("b") }, 0, 2);
    expect(order).toEqual(["a", "b", "a", "b", "a", "b"]);
    expect(result.a.least).toBeGreaterThanOrEqual(0);
  });
});
