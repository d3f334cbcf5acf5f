import { describe, expect, it } from "vitest";
import { kindOf, terminalsOf } from "../../core/parts/index.ts";
import { covers, model, only } from "./model.ts";

const contacts = (props: Record<string, unknown>) =>
  model("relay", props).flatMap((element) => (element.type === "contact" ? [element] : []));

describe("relay", () => {
  it("has the pins of its contact sort, numbered as on the part", () => {
    const pins = (contact: string) =>
      terminalsOf({ id: "k", kind: "relay", props: { contact } }).map(({ name }) => name);
    expect(pins("make")).toEqual(["30", "85", "86", "87"]);
    expect(pins("changeover")).toEqual(["30", "85", "86", "87", "87a"]);
    expect(pins("twin-make")).toEqual(["30", "85", "86", "87", "87b"]);
  });

  it("keeps every pin it has where it is when its contact sort changes", () => {
    const places = (contact: string) =>
      new Map(terminalsOf({ id: "k", kind: "relay", props: { contact } }).map(({ name, at }) => [name, at.join()]));
    const make = places("make");
    for (const contact of ["changeover", "twin-make"]) {
      for (const [name, at] of make) expect(places(contact).get(name)).toBe(at);
    }
  });

  it("closes 87 when pulled in, each contact with its own resistance and rating", () => {
    expect(contacts({})).toEqual([
      { type: "contact", a: "30", b: "87", ohm: 0.005, movedBy: { coil: "coil", closedWhen: "pulled-in" }, ratedA: 30 },
    ]);
  });

  it("joins 87a to 30 while released, at the smaller rating", () => {
    expect(contacts({ contact: "changeover" })[1]).toMatchObject({
      b: "87a",
      movedBy: { coil: "coil", closedWhen: "released" },
      ratedA: 20,
    });
  });

  it("closes 87b together with 87 on a twin-make relay", () => {
    expect(
      contacts({ contact: "twin-make", makeRatedA: 25 }).map(({ b, movedBy, ratedA }) => [b, movedBy, ratedA]),
    ).toEqual([
      ["87", { coil: "coil", closedWhen: "pulled-in" }, 25],
      ["87b", { coil: "coil", closedWhen: "pulled-in" }, 25],
    ]);
  });

  it("has a coil of 90 ohm from 85 to 86 that stands 2.1 times its pull-in volts", () => {
    expect(only(model("relay"), "coil")).toMatchObject({
      a: "85",
      b: "86",
      ohm: 90,
      pullInV: 7.5,
      dropOutV: 1.5,
      maxV: 15.75,
    });
    expect(only(model("relay", { pullInV: 16 }), "coil").maxV).toBeCloseTo(33.6, 9);
    expect(only(model("relay", { coilMaxV: 14 }), "coil").maxV).toBe(14);
  });

  it("carries its suppression as real elements: 680 ohm across the coil, or a diode with its cathode at 86", () => {
    expect(model("relay").map(({ type }) => type)).toEqual(["coil", "contact"]);
    expect(only(model("relay", { suppression: "resistor" }), "load")).toMatchObject({
      role: "resistance",
      draw: { law: "resistor", ohm: 680 },
    });
    expect(only(model("relay", { suppression: "diode" }), "diode")).toMatchObject({
      a: "85",
      k: "86",
      forwardV: 0.7,
      ohm: 0.01,
      suppresses: "coil",
    });
  });

  it("has bare blades where nothing is plugged on", () => {
    expect(new Set(Object.values(covers("relay", { contact: "changeover" })))).toEqual(new Set(["covered bare"]));
  });

  it("comes from the Shelf with the coil of the vehicle's volts", () => {
    // Coil of a 24 V mini relay: 255 ohm, pulls in by 16 V, lets go below 3 V (a maker's data sheet).
    expect(kindOf("relay")!.fresh?.(24)).toEqual({ coilOhm: 255, pullInV: 16, dropOutV: 3 });
    expect(kindOf("relay")!.fresh?.(12)).toEqual({});
  });
});
