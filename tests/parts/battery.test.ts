import { describe, expect, it } from "vitest";
import { CHASSIS, factsOf } from "../../core/parts/index.ts";
import { covers, model, only } from "./model.ts";

describe("battery", () => {
  it("is an EMF behind 6 milliohm, 12.6 V at rest and 13.8 V running, that gives its network its zero", () => {
    expect(only(model("battery"), "source")).toMatchObject({
      plus: "+",
      minus: "-",
      restV: 12.6,
      runningV: 13.8,
      ohm: 0.006,
      when: null,
      zero: true,
    });
    expect(only(model("battery"), "source")).not.toHaveProperty("fuseA");
  });

  it("may have no resistance at all", () => {
    expect(only(model("battery", { internalMilliohm: 0 }), "source").ohm).toBe(0);
  });

  it("is strapped to the chassis unless the person says otherwise", () => {
    expect(only(model("battery"), "link")).toEqual({ type: "link", a: "-", b: CHASSIS, ohm: 0, bond: "assumed" });
  });

  it("has no strap as the upper one of two in series, unless the person gives one", () => {
    const upper = { seriesUpper: true };
    expect(model("battery", {}, upper).some(({ type }) => type === "link")).toBe(false);
    expect(only(model("battery", { chassisBondMilliohm: 2 }, upper), "link")).toMatchObject({
      ohm: 0.002,
      bond: "given",
    });
  });

  it("has no strap on another frame, where the file says null", () => {
    expect(model("battery", { chassisBondMilliohm: null }).map(({ type }) => type)).toEqual(["source"]);
  });

  it("keeps its posts covered, wired or not", () => {
    expect(covers("battery")).toEqual({ "+": "covered covered", "-": "covered covered" });
  });

  it("tells of its capacity, unknown until given, and of its sensor", () => {
    const facts = (props: object) => factsOf({ id: "b", kind: "battery", props: { ...props } }).battery;
    expect(facts({})).toEqual({ capacityAh: null, sensor: false });
    expect(facts({ capacityAh: 70, sensor: true })).toEqual({ capacityAh: 70, sensor: true });
  });
});
