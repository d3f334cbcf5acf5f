import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kindOf, settingsOf, terminalsOf } from "../../core/parts/index.ts";
import { model } from "./model.ts";

const kind = kindOf("custom")!;
const latching = {
  terminals: [
    { name: "in", at: [0, 0], exit: "left" },
    { name: "out", at: [6, 0], exit: "right", unwired: "covered" },
    { name: "gnd", at: [3, 3], exit: "down" },
  ],
  elements: [
    { type: "coil", name: "k", a: "in", b: "gnd", ohm: 120 },
    { type: "contact", a: "in", b: "$mid", coil: "k" },
    { type: "protection", a: "$mid", b: "out", ratingA: 10 },
    { type: "load", a: "out", b: "gnd", watts: 5, law: "power" },
    { type: "link", a: "gnd", b: "$chassis" },
  ],
};

const accepts = (key: string, value: unknown) => kind.settings[key]!.schema.safeParse(value).success;
const faultOf = (props: Record<string, unknown>) => kind.check!(settingsOf({ id: "n", kind: "custom", props }));

describe("a symbol of one's own", () => {
  it("is made of the plain elements it lists, with their usual values filled in", () => {
    expect(faultOf(latching)).toBeNull();
    expect(model("custom", latching)).toEqual([
      expect.objectContaining({ type: "coil", name: "k", ohm: 120, pullInV: 7.5, maxV: 15.75 }),
      expect.objectContaining({
        type: "contact",
        b: "$mid",
        ohm: 0.005,
        movedBy: { coil: "k", closedWhen: "pulled-in" },
      }),
      expect.objectContaining({ type: "protection", ratingA: 10, ohm: 0.0077, closed: true }),
      expect.objectContaining({ type: "load", draw: { law: "power", watts: 5, opens: null }, statedA: 5 / 12 }),
      { type: "link", a: "gnd", b: "$chassis", ohm: 0 },
    ]);
  });

  it("names its terminals, their sides and their covers", () => {
    expect(terminalsOf({ id: "n", kind: "custom", props: latching })[1]).toMatchObject({
      name: "out",
      exit: "right",
      cover: { wired: "covered", unwired: "covered" },
    });
  });

  it("has a control when it lists positions, off first", () => {
    const control = (props: Record<string, unknown>) => kind.control!(settingsOf({ id: "n", kind: "custom", props }));
    expect(control(latching)).toBeNull();
    expect(control({ ...latching, positions: ["off", "low", "high"] })?.positions).toEqual(["off", "low", "high"]);
    expect(faultOf({ ...latching, positions: ["low", "off"] })).toMatchObject({ key: "positions[0]", got: "low" });
  });

  it.each([
    ["an end that is no terminal", [{ type: "link", a: "in", b: "nowhere" }], "elements[0].b"],
    ["a coil that is not there", [{ type: "contact", a: "in", b: "out", coil: "k9" }], "elements[0].coil"],
    [
      "a position it does not have",
      [{ type: "contact", a: "in", b: "out", positions: ["on"] }],
      "elements[0].positions",
    ],
    [
      "two coils of one name",
      [
        { type: "coil", a: "in", b: "out" },
        { type: "coil", a: "in", b: "out" },
      ],
      "elements",
    ],
  ])("refuses %s", (_, elements, key) => {
    expect(faultOf({ ...latching, elements })).toMatchObject({ key });
  });

  it("refuses names that collide with what records keep for themselves, and names twice", () => {
    const named = (...names: string[]) => names.map((name, x) => ({ name, at: [x, 0], exit: "left" }));
    expect(accepts("terminals", named("A", "B"))).toBe(true);
    for (const names of [["__proto__"], ["constructor"], ["a.b"], [""], ["$x"], ["A", "A"]]) {
      expect(accepts("terminals", named(...names)), names.join()).toBe(false);
    }
  });

  it("refuses more than it can draw or solve in a moment", () => {
    const many = (count: number, one: unknown) => Array.from({ length: count }, () => one);
    const stroke = { shape: "circle", centre: [0, 0], radius: 1 };
    expect(accepts("drawing", many(400, stroke))).toBe(true);
    expect(accepts("drawing", many(401, stroke))).toBe(false);
    expect(accepts("elements", many(201, { type: "link", a: "1", b: "2" }))).toBe(false);
    expect(accepts("drawing", [{ shape: "line", points: many(201, [0, 0]) }])).toBe(false);
    expect(
      accepts("drawing", [
        {
          shape: "line",
          points: [
            [0, 0],
            [1e9, 0],
          ],
        },
      ]),
    ).toBe(false);
    expect(accepts("drawing", [{ shape: "script", text: "x" }])).toBe(false);
  });

  it("refuses element settings outside their range", () => {
    expect(accepts("elements", [{ type: "load", a: "1", b: "2", ohm: 0 }])).toBe(false);
    expect(accepts("elements", [{ type: "coil", a: "1", b: "2", ohm: -1 }])).toBe(false);
    expect(accepts("elements", [{ type: "spell", a: "1", b: "2" }])).toBe(false);
  });

  it("never throws over whatever JSON stands in its settings: it is refused, or it can be drawn and modelled", () => {
    const anything = fc.record({ terminals: fc.jsonValue(), drawing: fc.jsonValue(), elements: fc.jsonValue() });
    fc.assert(
      fc.property(anything, (props) => {
        if (!Object.entries(props).every(([key, value]) => accepts(key, value))) return;
        const settings = settingsOf({ id: "n", kind: "custom", props });
        if (kind.check!(settings)) return;
        kind.symbol(settings, {});
        model("custom", props);
      }),
    );
  });
});
