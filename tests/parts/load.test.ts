import { describe, expect, it } from "vitest";
import { model, only } from "./model.ts";

const use = (props: Record<string, unknown>, nominalV: 12 | 24 = 12) =>
  only(model("load", props, { nominalV }), "load");

describe("load", () => {
  it("is a resistance by its ohms, or by its watts at its rated volts", () => {
    expect(use({ ohms: 2, watts: 500 })).toMatchObject({ draw: { law: "resistor", ohm: 2 }, statedA: 6 });
    expect(use({ watts: 72 })).toMatchObject({ draw: { law: "resistor", ohm: 2 }, statedA: 6 });
    expect(use({ watts: 72 }, 24)).toMatchObject({ draw: { law: "resistor", ohm: 8 }, statedA: 3 });
  });

  it("draws constant amps or watts when it says so", () => {
    expect(use({ model: "constant-current", amps: 4 })).toMatchObject({
      draw: { law: "current", amps: 4 },
      statedA: 4,
    });
    expect(use({ model: "constant-power", watts: 60 })).toMatchObject({
      draw: { law: "power", watts: 60, opens: null },
      statedA: 5,
    });
  });

  it("draws nothing when nobody has said what it draws", () => {
    expect(use({})).toMatchObject({ draw: { law: "resistor", ohm: null }, statedA: null });
  });

  it("conducts reversed as a resistance whatever its polarity, else only when it has none", () => {
    expect(use({ ohms: 2 })).toMatchObject({ polarised: true, conductsReversed: true });
    expect(use({ model: "constant-power" })).toMatchObject({ polarised: true, conductsReversed: false });
    expect(use({ model: "constant-current", polarised: false })).toMatchObject({
      polarised: false,
      conductsReversed: true,
    });
  });

  it("has a start only when its start current is given", () => {
    expect(use({}).start).toBeNull();
    expect(use({ startA: 40, startS: 2 }).start).toEqual({ ohm: null, amps: 40, seconds: 2 });
  });

  it("keeps its volt limits for the rules: it never opens by itself", () => {
    expect(use({ model: "constant-power", watts: 60, minV: 10, maxV: 15 })).toMatchObject({
      draw: { opens: null },
      minV: 10,
      maxV: 15,
    });
  });
});
