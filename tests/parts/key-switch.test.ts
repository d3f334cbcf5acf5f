import { describe, expect, it } from "vitest";
import { joins } from "./joins.ts";
import { covers, model } from "./model.ts";

describe("key switch", () => {
  it("joins what its positions say, and nothing at rest", () => {
    expect(joins("key-switch")).toEqual({
      off: [],
      accessory: ["30-75"],
      on: ["30-75", "30-15"],
      start: ["30-15", "30-50"],
    });
  });

  it("has 10 milliohm a contact and no rating until given", () => {
    for (const element of model("key-switch")) expect(element).toMatchObject({ ohm: 0.01, ratedA: null });
    for (const element of model("key-switch", { milliohm: 0, ratedA: 20 }))
      expect(element).toMatchObject({ ohm: 0, ratedA: 20 });
  });

  it("has bare tabs where nothing is plugged on", () => {
    expect(new Set(Object.values(covers("key-switch")))).toEqual(new Set(["covered bare"]));
  });
});
