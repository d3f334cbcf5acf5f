import { describe, expect, it } from "vitest";
import { model } from "./model.ts";

describe("converter", () => {
  it("is one element with both sides apart, 85 % efficient, its limit unknown until given", () => {
    expect(model("converter", { outV: 13.8 })).toEqual([
      {
        type: "converter",
        inPlus: "in+",
        inMinus: "in-",
        outPlus: "out+",
        outMinus: "out-",
        outV: 13.8,
        maxA: null,
        efficiency: 0.85,
      },
    ]);
  });
});
