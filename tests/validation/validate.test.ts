import { describe, expect, it } from "vitest";
import type { Quantity } from "./quantity.ts";
import { accuracyTable, run } from "./validate.ts";

const quantity = (expected: number, got: number | null): Quantity => ({
  quantity: "length of a yard",
  unit: "m",
  limit: 0.01,
  because: "made up",
  source: "made up",
  checks: [
    { of: "first", expected: 1, got: 1 },
    { of: "second", expected, got },
  ],
});

describe("the accuracy table", () => {
  it("gives the mean and the worst error of each quantity", () => {
    expect(accuracyTable([quantity(1, 1.004)])).toMatchObject([
      { checks: 2, meanError: expect.closeTo(0.002, 9), worstError: expect.closeTo(0.004, 9), failure: null },
    ]);
  });

  it("names the check that is beyond the limit, and counts no answer as one", () => {
    expect(accuracyTable([quantity(1, 1.1)])[0]?.failure).toBe("second: got 1.1, wanted 1");
    expect(accuracyTable([quantity(1, null)])[0]?.failure).toBe("second: got null, wanted 1");
  });

  it("is within all limits as the program stands, and says so by its exit code", () => {
    let text = "";
    const io = {
      out: (written: string) => {
        text += written;
      },
      err: (written: string) => {
        text += written;
      },
      read: () => Promise.reject(new Error("reads nothing")),
      write: () => Promise.reject(new Error("writes nothing")),
    };
    expect(run([], io)).toBe(0);
    expect(text).toMatch(/^quantity +checks +mean error/);
  });
});
