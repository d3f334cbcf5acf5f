import { describe, expect, it } from "vitest";
import { model } from "./model.ts";

describe("diode", () => {
  it("conducts from A to K at 0.7 V behind 10 milliohm", () => {
    expect(model("diode")).toEqual([{ type: "diode", a: "A", k: "K", forwardV: 0.7, ohm: 0.01, ratedA: null }]);
  });
});
