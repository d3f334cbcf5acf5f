import { describe, expect, it } from "vitest";
import { model, only } from "./model.ts";

const use = (props: Record<string, unknown>, nominalV: 12 | 24 = 12) =>
  only(model("motor", props, { nominalV }), "load");

describe("motor", () => {
  it("draws constant watts either way round and starts as a resistance, unknown until given", () => {
    expect(use({ watts: 96, startOhm: 0.2 })).toMatchObject({
      draw: { law: "power", watts: 96, opens: null },
      polarised: false,
      conductsReversed: true,
      onWhen: { ampsFraction: 0.05 },
      statedA: 8,
      start: { ohm: 0.2, amps: null, seconds: null },
    });
    expect(use({}).start).toEqual({ ohm: null, amps: null, seconds: null });
  });
});
