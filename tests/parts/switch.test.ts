import { describe, expect, it } from "vitest";
import { kindOf, settingsOf } from "../../core/parts/index.ts";
import { joins } from "./joins.ts";
import { covers, model } from "./model.ts";

describe("switch", () => {
  it("joins what its positions say, and nothing at rest", () => {
    expect(joins("switch")).toEqual({ off: [], on: ["1-2"] });
  });

  it("has 10 milliohm a contact and no rating until given", () => {
    for (const element of model("switch")) expect(element).toMatchObject({ ohm: 0.01, ratedA: null });
    for (const element of model("switch", { milliohm: 0, ratedA: 20 }))
      expect(element).toMatchObject({ ohm: 0, ratedA: 20 });
  });

  it("has bare tabs where nothing is plugged on", () => {
    expect(new Set(Object.values(covers("switch")))).toEqual(new Set(["covered bare"]));
  });

  it("springs back only when it says so", () => {
    const momentary = (props: object) =>
      kindOf("switch")!.control!(settingsOf({ id: "s", kind: "switch", props: { ...props } }))!.momentary;
    expect([momentary({}), momentary({ momentary: true })]).toEqual([false, true]);
  });
});
