import { describe, expect, it } from "vitest";
import { joins } from "./joins.ts";
import { covers, model } from "./model.ts";

describe("changeover switch", () => {
  it("joins what its positions say, and nothing at rest", () => {
    expect(joins("changeover-switch")).toEqual({ off: [], "1": ["common-1"], "2": ["common-2"] });
  });

  it("has 10 milliohm a contact and no rating until given", () => {
    for (const element of model("changeover-switch")) expect(element).toMatchObject({ ohm: 0.01, ratedA: null });
    for (const element of model("changeover-switch", { milliohm: 0, ratedA: 20 }))
      expect(element).toMatchObject({ ohm: 0, ratedA: 20 });
  });

  it("has bare tabs where nothing is plugged on", () => {
    expect(new Set(Object.values(covers("changeover-switch")))).toEqual(new Set(["covered bare"]));
  });
});
