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

const place = fc.constantFrom("a", "a", "b", "b", "$mid", "$chassis", "gone");
const ends = fc.record({ a: place, b: place, k: place, plus: place, minus: place, outPlus: place, outMinus: place });
const extras = fc.record(
  { ohm: fc.constantFrom(5, 0, "5"), name: fc.constantFrom("k", "toString"), coil: fc.constantFrom("k") },
  { requiredKeys: [] },
);
const element = fc
  .tuple(fc.constantFrom("link", "source", "protection", "contact", "coil", "diode", "load"), ends, extras)
  .map(([type, own, more]) => ({ type, ...own, ...more }));
const stroke = fc.oneof(
  fc.record({
    shape: fc.constant("circle"),
    centre: fc.tuple(fc.integer({ min: -90, max: 110 }), fc.constant(0)),
    radius: fc.constantFrom(1, 0),
  }),
  fc.jsonValue(),
);
/** Symbols much like a right one, some of them wrong in one place or another. */
const nearlyRight = fc.record({
  terminals: fc.constant([
    { name: "a", at: [0, 0], exit: "left" },
    { name: "b", at: [4, 0], exit: "right" },
  ]),
  drawing: fc.array(stroke, { maxLength: 1 }),
  elements: fc.array(element, { maxLength: 3 }),
});

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
    const bad = [["__proto__"], ["constructor"], ["a.b"], [""], ["$x"], ["A", "A"]];
    expect(bad.filter((names) => accepts("terminals", named(...names)))).toEqual([]);
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

  it("can be drawn and modelled whenever it is not refused", () => {
    let taken = 0;
    fc.assert(
      fc.property(nearlyRight, (props) => {
        if (!Object.entries(props).every(([key, value]) => accepts(key, value))) return;
        const settings = settingsOf({ id: "n", kind: "custom", props });
        if (kind.check!(settings)) return;
        taken++;
        expect(kind.symbol(settings, {}).length).toBeGreaterThan(0);
        expect(model("custom", props)).toHaveLength(props.elements.length);
      }),
      { numRuns: 300 },
    );
    expect(taken).toBeGreaterThan(20);
  });
});
