import { describe, expect, it } from "vitest";
import { CHASSIS, factsOf, kindOf, settingsOf } from "../../core/parts/index.ts";
import { covers, model, only } from "./model.ts";

describe("factory feed", () => {
  it("is a source against the chassis while it is on, and nothing else while it feeds nothing", () => {
    const elements = model("factory-feed");
    expect(elements).toHaveLength(1);
    expect(only(elements, "source")).toMatchObject({
      plus: "out",
      minus: CHASSIS,
      restV: 12.6,
      runningV: 13.8,
      ohm: 0.02,
      when: ["on"],
      fuseA: null,
      zero: false,
    });
  });

  it("keeps what the vehicle already feeds on the wire, on or off", () => {
    const load = only(model("factory-feed", { existingOhm: 12 }), "load");
    expect(load).toMatchObject({ a: "out", b: CHASSIS, role: "existing", draw: { law: "resistor", ohm: 12 } });
  });

  it("has no control when it is always on", () => {
    const kind = kindOf("factory-feed")!;
    const control = (props: object) =>
      kind.control?.(settingsOf({ id: "v", kind: "factory-feed", props: { ...props } }));
    expect(control({})).toMatchObject({ positions: ["off", "on"] });
    expect(control({ always: true })).toBeNull();
    expect(only(model("factory-feed", { always: true }), "source").when).toBeNull();
  });

  it("carries the vehicle's own fuse once it is known", () => {
    expect(only(model("factory-feed", { fuseA: 15 }), "source").fuseA).toBe(15);
  });

  it("does not know whether it is watched or pulsed until someone says", () => {
    expect(factsOf({ id: "v", kind: "factory-feed" }).feed).toEqual({
      monitored: "unknown",
      pulsed: "unknown",
      spareA: null,
      measured: true,
    });
  });

  it("is not yet measured when it comes from the Shelf, and has the volts of the vehicle", () => {
    expect(kindOf("factory-feed")!.fresh?.(12)).toEqual({ measured: false });
    expect(kindOf("factory-feed")!.fresh?.(24)).toMatchObject({ measured: false, restV: 25.2, runningV: 27.6 });
  });

  it("stays covered while nobody taps it", () => {
    expect(covers("factory-feed")).toEqual({ out: "covered covered" });
  });
});
