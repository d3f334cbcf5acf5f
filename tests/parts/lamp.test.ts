import { describe, expect, it } from "vitest";
import { model, only } from "./model.ts";

const lamp = (props: Record<string, unknown>, nominalV: 12 | 24 = 12) =>
  only(model("lamp", props, { nominalV }), "load");

describe("LED lamp", () => {
  it("draws its watts at any volts from half its rated volts up, and is open below, above its maximum and reversed", () => {
    expect(lamp({ watts: 27 })).toMatchObject({
      draw: { law: "power", watts: 27, opens: { minV: 6, maxV: null } },
      conductsReversed: false,
      polarised: true,
      onWhen: { drawing: true },
    });
    expect(lamp({ watts: 27, minV: 9, maxV: 32 }).draw).toMatchObject({ opens: { minV: 9, maxV: 32 } });
  });

  it("takes the system's volts as its rated volts", () => {
    expect(lamp({ watts: 48 }, 24)).toMatchObject({ ratedV: 24, statedA: 2, draw: { opens: { minV: 12 } } });
  });

  it("says nothing of limits the person never gave", () => {
    expect(lamp({ watts: 27 })).toMatchObject({ minV: null, maxV: null });
  });
});

describe("filament lamp", () => {
  it("is rated at 12.8 V, takes either polarity and is on from a quarter of its volts", () => {
    expect(lamp({ type: "filament", watts: 55 }, 24)).toMatchObject({
      draw: { law: "filament", watts: 55, ratedV: 12.8 },
      ratedV: 12.8,
      polarised: false,
      conductsReversed: true,
      onWhen: { voltsFraction: 0.25 },
    });
  });
});

describe("any lamp", () => {
  it("is meant to be off at rest unless the person says it may be on", () => {
    expect(lamp({}).mustBeOffAtRest).toBe(true);
    expect(lamp({ mustBeOffAtRest: false }).mustBeOffAtRest).toBe(false);
  });

  it("has unknown watts and amps until they are given", () => {
    expect(lamp({})).toMatchObject({ draw: { watts: null }, statedA: null });
  });
});
