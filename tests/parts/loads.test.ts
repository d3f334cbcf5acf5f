import { describe, expect, it } from "vitest";
import { model, only } from "./model.ts";

const use = (kind: string, props: Record<string, unknown>, nominalV: 12 | 24 = 12) =>
  only(model(kind, props, { nominalV }), "load");

describe("load", () => {
  it("is a resistance by its ohms, or by its watts at its rated volts", () => {
    expect(use("load", { ohms: 2, watts: 500 })).toMatchObject({ draw: { law: "resistor", ohm: 2 }, statedA: 6 });
    expect(use("load", { watts: 72 })).toMatchObject({ draw: { law: "resistor", ohm: 2 }, statedA: 6 });
    expect(use("load", { watts: 72 }, 24)).toMatchObject({ draw: { law: "resistor", ohm: 8 }, statedA: 3 });
  });

  it("draws constant amps or watts when it says so", () => {
    expect(use("load", { model: "constant-current", amps: 4 })).toMatchObject({
      draw: { law: "current", amps: 4 },
      statedA: 4,
    });
    expect(use("load", { model: "constant-power", watts: 60 })).toMatchObject({
      draw: { law: "power", watts: 60, opens: null },
      statedA: 5,
    });
  });

  it("draws nothing when nobody has said what it draws", () => {
    expect(use("load", {})).toMatchObject({ draw: { law: "resistor", ohm: null }, statedA: null });
  });

  it("conducts reversed as a resistance whatever its polarity, else only when it has none", () => {
    expect(use("load", { ohms: 2 })).toMatchObject({ polarised: true, conductsReversed: true });
    expect(use("load", { model: "constant-power" })).toMatchObject({ polarised: true, conductsReversed: false });
    expect(use("load", { model: "constant-current", polarised: false })).toMatchObject({
      polarised: false,
      conductsReversed: true,
    });
  });

  it("has a start only when its start current is given", () => {
    expect(use("load", {}).start).toBeNull();
    expect(use("load", { startA: 40, startS: 2 }).start).toEqual({ ohm: null, amps: 40, seconds: 2 });
  });

  it("keeps its volt limits for the rules: it never opens by itself", () => {
    expect(use("load", { model: "constant-power", watts: 60, minV: 10, maxV: 15 })).toMatchObject({
      draw: { opens: null },
      minV: 10,
      maxV: 15,
    });
  });
});

describe("motor", () => {
  it("draws constant watts either way round and starts as a resistance, unknown until given", () => {
    expect(use("motor", { watts: 96, startOhm: 0.2 })).toMatchObject({
      draw: { law: "power", watts: 96, opens: null },
      polarised: false,
      conductsReversed: true,
      onWhen: { ampsFraction: 0.05 },
      statedA: 8,
      start: { ohm: 0.2, amps: null, seconds: null },
    });
    expect(use("motor", {}).start).toEqual({ ohm: null, amps: null, seconds: null });
  });
});

describe("resistor", () => {
  it("is plain resistance between 1 and 2, unknown until given", () => {
    expect(use("resistor", { ohms: 6 })).toMatchObject({
      a: "1",
      b: "2",
      role: "resistance",
      draw: { law: "resistor", ohm: 6 },
    });
    expect(use("resistor", {}).draw).toEqual({ law: "resistor", ohm: null });
  });
});

describe("diode", () => {
  it("conducts from A to K at 0.7 V behind 10 milliohm", () => {
    expect(model("diode")).toEqual([{ type: "diode", a: "A", k: "K", forwardV: 0.7, ohm: 0.01, ratedA: null }]);
  });
});

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
