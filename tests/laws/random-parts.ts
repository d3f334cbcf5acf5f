import fc from "fast-check";
import type { Cover, Part } from "../../core/document/index.ts";
import { elementForms } from "../../core/parts/custom-elements.ts";

/** A part without its id, and where a chain enters and leaves it. */
export interface Link {
  readonly kind: string;
  readonly props: Record<string, unknown>;
  readonly enters: string;
  readonly leaves: string;
  readonly covers?: Record<string, Cover>;
}

type Values = { readonly [key: string]: fc.Arbitrary<unknown> };

const amount = (...values: (number | null)[]) => fc.constantFrom(...values);
const ratingA = amount(1, 3, 5, 7.5, 10, 12, 15, 20, 30, 40, 60, null);
const ratedA = amount(5, 10, 20, 30, 100, null);
const milliohm = amount(0.5, 2, 5, 10, 100);
const flag = fc.boolean();
const mostly = (usual: boolean) => fc.constantFrom(usual, usual, usual, !usual);

/** Each setting given or not, by chance. */
function props(values: Values): fc.Arbitrary<Record<string, unknown>> {
  return fc.record(values, { requiredKeys: [] });
}

function link(kind: string, values: Values, ...ways: readonly (readonly [string, string])[]): fc.Arbitrary<Link> {
  return fc
    .tuple(props(values), fc.constantFrom(...ways))
    .map(([given, [enters, leaves]]) => ({ kind, props: given, enters, leaves }));
}

const covers = fc.constantFrom<Cover>("bare", "covered", "cavity");

const contact = { ratedA, milliohm, momentary: flag };
const fuseValues = {
  ratingA,
  body: fc.constantFrom("blade", "mini-blade", "maxi-blade", "bolt", "glass"),
  milliohm,
  holderA: ratedA,
  fitted: mostly(true),
};
const relayValues = {
  coilOhm: amount(85, 90, 255),
  pullInV: amount(6, 7.5, 13),
  dropOutV: amount(1, 1.5, 3),
  milliohm,
  makeRatedA: amount(10, 30, 40),
  suppression: fc.constantFrom("none", "resistor", "diode"),
};
const relay = (sort: string, out: string) =>
  link("relay", { ...relayValues, contact: fc.constant(sort) }, ["30", out], [out, "30"]).map((one) => ({
    ...one,
    props: { ...one.props, contact: sort },
  }));

/** What may stand in a chain between a source and a use. */
export const through: fc.Arbitrary<Link> = fc.oneof(
  { weight: 6, arbitrary: link("fuse", fuseValues, ["1", "2"], ["2", "1"]) },
  link("breaker", { ratingA, reset: fc.constantFrom("auto", "held", "manual"), milliohm, closed: mostly(true) }, [
    "1",
    "2",
  ]),
  fc
    .tuple(fc.array(props({ ratingA, milliohm, fitted: mostly(true) }), { minLength: 1, maxLength: 4 }), ratedA)
    .map(([ways, rated]): Link => ({
      kind: "fuse-block",
      props: { ways, ratedA: rated },
      enters: "feed",
      leaves: `${ways.length}`,
    })),
  { weight: 5, arbitrary: link("switch", contact, ["1", "2"]) },
  { weight: 2, arbitrary: link("changeover-switch", contact, ["common", "1"], ["2", "common"]) },
  link("key-switch", contact, ["30", "15"], ["30", "75"], ["30", "50"]),
  { weight: 2, arbitrary: relay("make", "87") },
  { weight: 2, arbitrary: relay("changeover", "87a") },
  relay("changeover", "87"),
  relay("twin-make", "87b"),
  { weight: 2, arbitrary: link("diode", { forwardV: amount(0.3, 0.7), milliohm, ratedA }, ["A", "K"], ["K", "A"]) },
  link("resistor", { ohms: amount(0.5, 10, 680, null) }, ["1", "2"]),
  link("plug", { ways: fc.constantFrom(1, 3), ratedA, milliohm, fedSide: fc.constantFrom("pins", "sockets") }, [
    "a1",
    "b1",
  ]),
  link("bus-bar", { posts: fc.constantFrom(2, 4), ratedA }, ["1", "2"]),
  link("splice", { barrel: fc.constantFrom("red", "blue", "1.5-2.5 mm2"), tap: fc.constant("piercing") }, ["s", "s"]),
  link("ground-strip", { posts: fc.constantFrom(2, 4), ratedA }, ["1", "2"]),
);

const ends: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  Object.entries(elementForms).map(([type, form]) => [type, form.ends]),
);

/** A symbol of a person's own: plain elements between its terminals, a node inside it and the chassis. */
export const ownSymbol: fc.Arbitrary<Link> = fc
  .tuple(
    fc.array(
      fc.record({
        type: fc.constantFrom(...Object.keys(ends)),
        at: fc.array(fc.constantFrom("1", "2", "3", "$n", "$chassis"), { minLength: 4, maxLength: 4 }),
        moved: fc.constantFrom<Record<string, unknown>>({}, { positions: ["a"] }, { positions: ["off", "b"] }),
        amounts: fc.constantFrom<Record<string, unknown>>(
          {},
          { ohm: 12, watts: 20, amps: 2 },
          { milliohm: 0, ratingA: 10 },
        ),
      }),
      { maxLength: 6 },
    ),
    fc.boolean(),
  )
  .map(([elements, hasCoil]): Link => {
    const inside = elements
      .filter(({ type }) => type !== "coil")
      .map(({ type, at, moved, amounts }) => ({
        type,
        ...Object.fromEntries(ends[type]!.map((end, index) => [end, at[index]])),
        ...moved,
        ...amounts,
      }));
    const coil = { type: "coil", a: "1", b: "3" };
    const contact = { type: "contact", a: "1", b: "2", coil: "coil" };
    const terminals = ["1", "2", "3"].map((name, x) => ({ name, at: [2 * x, 0], exit: "up" }));
    const props = {
      terminals,
      elements: [...inside, ...(hasCoil ? [coil, contact] : [])],
      positions: ["off", "a", "b"],
    };
    return { kind: "custom", props, enters: "1", leaves: "2" };
  });

const watts = amount(0.5, 5, 21, 55, 120, null);

/** What a chain ends in. */
export const use: fc.Arbitrary<Link> = fc.oneof(
  {
    weight: 4,
    arbitrary: link(
      "lamp",
      {
        type: fc.constantFrom("led", "filament"),
        watts,
        ratedV: amount(12, 24),
        minV: amount(9),
        maxV: amount(16, 32),
      },
      ["+", "-"],
      ["-", "+"],
    ),
  },
  {
    weight: 4,
    arbitrary: link(
      "load",
      {
        model: fc.constantFrom("resistor", "constant-current", "constant-power"),
        ohms: amount(1, 4, 100),
        watts,
        amps: amount(0.05, 2, 8),
        minV: amount(10.5),
        maxV: amount(15),
        polarised: flag,
        continuous: flag,
        startA: amount(20),
      },
      ["+", "-"],
      ["-", "+"],
    ),
  },
  {
    weight: 2,
    arbitrary: link(
      "motor",
      { watts, ratedV: amount(12), minV: amount(10), startOhm: amount(0.2, 1), startS: amount(2) },
      ["+", "-"],
    ),
  },
  { weight: 3, arbitrary: link("relay", relayValues, ["86", "85"], ["85", "86"]) },
  link("converter", { outV: amount(5, 12, 24), maxA: ratedA, efficiency: amount(0.5, 0.85, 1) }, ["in+", "in-"]),
);

/** What a chain starts at. */
export const source: fc.Arbitrary<Link> = fc.oneof(
  {
    weight: 4,
    arbitrary: link(
      "battery",
      {
        restV: amount(12.6, 12.2),
        runningV: amount(13.8, 14.4),
        internalMilliohm: amount(6, 20),
        capacityAh: amount(60, 100),
        chassisBondMilliohm: amount(0.5, 2, null),
        sensor: flag,
      },
      ["-", "+"],
    ),
  },
  link(
    "factory-feed",
    {
      sourceMilliohm: amount(20, 50),
      fuseA: amount(10, 15, null),
      spareA: amount(1, 5, null),
      existingOhm: amount(3, 7),
      monitored: fc.constantFrom("yes", "no", "unknown"),
      pulsed: fc.constantFrom("yes", "no", "unknown"),
      always: flag,
      measured: flag,
    },
    ["out", "out"],
  ),
);

export const ground: fc.Arbitrary<Link> = link(
  "chassis",
  { jointMilliohm: amount(0, 1, 20), surface: fc.constantFrom("clean", "painted", "unknown") },
  ["g", "g"],
);

/** Gives some parts a cover of their own on the terminal a chain leaves. */
export function withCover(one: fc.Arbitrary<Link>): fc.Arbitrary<Link> {
  return fc
    .tuple(one, fc.option(covers, { freq: 6, nil: undefined }))
    .map(([link, cover]) => (cover === undefined ? link : { ...link, covers: { [link.leaves]: cover } }));
}

export function partOf(id: string, { kind, props, covers }: Link): Part {
  return { id, kind, props, ...(covers ? { covers } : {}) };
}
