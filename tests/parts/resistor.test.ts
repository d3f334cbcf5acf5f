import { describe, expect, it } from "vitest";
import { model, only } from "./model.ts";

const use = (props: Record<string, unknown>, nominalV: 12 | 24 = 12) =>
  only(model("resistor", props, { nominalV }), "load");

describe("resistor", () => {
  it("is plain resistance between 1 and 2, unknown until given", () => {
    expect(use({ ohms: 6 })).toMatchObject({
      a: "1",
      b: "2",
      role: "resistance",
      draw: { law: "resistor", ohm: 6 },
    });
    expect(use({}).draw).toEqual({ law: "resistor", ohm: null });
  });
});
