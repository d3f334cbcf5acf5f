import type { Part } from "../../../core/document/index.ts";
import { CHASSIS, type Element, type Load } from "./element.ts";

/** A part's settings as the file gives them, and its terminals by address. */
class Given {
  readonly id: string;
  readonly nominalV: number;
  readonly isUpper: boolean;
  private readonly props: Readonly<Record<string, unknown>>;

  constructor(id: string, props: Readonly<Record<string, unknown>>, nominalV: number, isUpper: boolean) {
    this.id = id;
    this.props = props;
    this.nominalV = nominalV;
    this.isUpper = isUpper;
  }

  at(terminal: string): string {
    return `${this.id}.${terminal}`;
  }

  said(key: string): unknown {
    return this.props[key];
  }

  number(key: string, usual: number): number {
    return this.orNull(key) ?? usual;
  }

  orNull(key: string): number | null {
    const value = this.props[key];
    return typeof value === "number" ? value : null;
  }

  flag(key: string, usual: boolean): boolean {
    const value = this.props[key];
    return typeof value === "boolean" ? value : usual;
  }

  row(props: Readonly<Record<string, unknown>>): Given {
    return new Given(this.id, props, this.nominalV, this.isUpper);
  }

  conductor(a: string, b: string, milliohm: number): Element {
    return { type: "conductor", a, b, ohm: milliohm / 1000, of: this.id };
  }

  contact(a: string, b: string, milliohm: number, closedIn: readonly string[]): Element {
    return { type: "contact", a: this.at(a), b: this.at(b), ohm: milliohm / 1000, of: this.id, closedIn };
  }

  load(more: Partial<Load>, a = "+", b = "-"): Load {
    return {
      type: "load",
      a: this.at(a),
      b: this.at(b),
      of: this.id,
      law: "idle",
      isCoil: false,
      amount: 0,
      ratedV: this.nominalV,
      minV: -Infinity,
      maxV: Infinity,
      eitherWay: true,
      ...more,
    };
  }
}

/** Cold milliohm of a fuse by its rating, reading 9. */
const FUSE_MILLIOHM: readonly (readonly [ratingA: number, milliohm: number])[] = [
  [1, 123],
  [2, 53.5],
  [3, 31.1],
  [4, 22.8],
  [5, 17.85],
  [7.5, 10.91],
  [10, 7.7],
  [15, 4.8],
  [20, 3.38],
  [25, 2.52],
  [30, 1.97],
  [40, 1.44],
];

function fuseOhm(given: Given): number {
  const stated = given.orNull("milliohm");
  const ratingA = given.orNull("ratingA");
  if (stated !== null) return stated / 1000;
  // With neither stated, the contract is silent; the program takes what it takes for an unknown wire. Below 1 A likewise its own choice.
  if (ratingA === null) return 1e-4;
  if (ratingA > 40) return 57.6 / ratingA / 1000;
  if (ratingA < 1) return 123 / ratingA / 1000;
  const above = FUSE_MILLIOHM.findIndex(([listedA]) => ratingA <= listedA);
  const [highA, high] = FUSE_MILLIOHM[above]!;
  if (highA === ratingA) return high / 1000;
  const [lowA, low] = FUSE_MILLIOHM[above - 1]!;
  return (low + ((high - low) * (ratingA - lowA)) / (highA - lowA)) / 1000;
}

function posts(given: Given): Element[] {
  const count = given.number("posts", 6);
  return Array.from({ length: count - 1 }, (_, at) => given.conductor(given.at("1"), given.at(`${at + 2}`), 0));
}

/** `+` to `-` of what uses current; no stated amount draws nothing. */
function consumer(given: Given, law: Load["law"], amount: number | null, more: Partial<Load> = {}): Element[] {
  return [given.load(amount === null ? more : { law, amount, ...more })];
}

/** By kind: what a part is made of, row by row of the contract's table. */
const KINDS: Readonly<Record<string, (given: Given) => Element[]>> = {
  battery: (given) => {
    const bond = given.said("chassisBondMilliohm");
    const isBonded = bond === undefined ? !given.isUpper : bond !== null;
    const source: Element = {
      type: "source",
      a: given.at("+"),
      b: given.at("-"),
      restV: given.number("restV", 12.6),
      runningV: given.number("runningV", 13.8),
      ohm: given.number("internalMilliohm", 6) / 1000,
      of: given.id,
      hasControl: false,
      isBattery: true,
      own: undefined,
    };
    return isBonded
      ? [source, given.conductor(given.at("-"), CHASSIS, given.number("chassisBondMilliohm", 0))]
      : [source];
  },
  "factory-feed": (given) => {
    const existing = given.orNull("existingOhm");
    const source: Element = {
      type: "source",
      a: given.at("out"),
      b: CHASSIS,
      restV: given.number("restV", 12.6),
      runningV: given.number("runningV", 13.8),
      ohm: given.number("sourceMilliohm", 20) / 1000,
      of: given.id,
      hasControl: !given.flag("always", false),
      isBattery: false,
      own: { at: given.id, ratingA: given.orNull("fuseA") },
    };
    if (existing === null) return [source];
    return [source, { ...given.load({ law: "resistor", amount: existing }, "out"), b: CHASSIS }];
  },
  fuse: (given) => [fuse(given, "1", "2", given.id, fuseOhm(given), given.flag("fitted", true), false)],
  breaker: (given) => [
    fuse(given, "1", "2", given.id, given.number("milliohm", 4) / 1000, given.flag("closed", true), true),
  ],
  "fuse-block": (given) => {
    const ways = (given.said("ways") as Record<string, unknown>[] | undefined) ?? [{}, {}, {}, {}];
    return ways.map((props, at) => {
      const way = given.row(props);
      return fuse(way, "feed", `${at + 1}`, given.at(`${at + 1}`), fuseOhm(way), way.flag("fitted", true), false);
    });
  },
  switch: (given) => [given.contact("1", "2", given.number("milliohm", 10), ["on"])],
  "changeover-switch": (given) =>
    ["1", "2"].map((side) => given.contact("common", side, given.number("milliohm", 10), [side])),
  "key-switch": (given) => {
    const milliohm = given.number("milliohm", 10);
    return [
      given.contact("30", "75", milliohm, ["accessory", "on"]),
      given.contact("30", "15", milliohm, ["on", "start"]),
      given.contact("30", "50", milliohm, ["start"]),
    ];
  },
  relay: (given) => {
    const milliohm = given.number("milliohm", 5);
    const coil = given.load({ law: "resistor", amount: given.number("coilOhm", 90), isCoil: true }, "85", "86");
    const contacts = { changeover: ["87a", "released"], "twin-make": ["87b", "pulled-in"] } as const;
    const extra = contacts[given.said("contact") as keyof typeof contacts];
    return [
      coil,
      ...suppression(given),
      given.contact("30", "87", milliohm, ["pulled-in"]),
      ...(extra ? [given.contact("30", extra[0], milliohm, [extra[1]])] : []),
    ];
  },
  lamp: (given) => {
    const watts = given.orNull("watts");
    if (given.said("type") === "filament")
      return consumer(given, "filament", watts, { ratedV: given.number("ratedV", 12.8) });
    const ratedV = given.number("ratedV", given.nominalV);
    const range = { minV: given.number("minV", ratedV / 2), maxV: given.number("maxV", Infinity) };
    return consumer(given, "power", watts, { ratedV, ...range, eitherWay: false });
  },
  load: (given) => {
    const ratedV = given.number("ratedV", given.nominalV);
    const eitherWay = !given.flag("polarised", true);
    const watts = given.orNull("watts");
    if (given.said("model") === "constant-current")
      return consumer(given, "current", given.orNull("amps"), { ratedV, eitherWay });
    if (given.said("model") === "constant-power") return consumer(given, "power", watts, { ratedV, eitherWay });
    return consumer(given, "resistor", given.orNull("ohms") ?? (watts === null ? null : ratedV ** 2 / watts), {
      ratedV,
    });
  },
  motor: (given) => consumer(given, "power", given.orNull("watts"), { ratedV: given.number("ratedV", given.nominalV) }),
  diode: (given) => [
    {
      type: "diode",
      a: given.at("A"),
      b: given.at("K"),
      volts: given.number("forwardV", 0.7),
      ohm: given.number("milliohm", 10) / 1000,
      of: given.id,
      suppresses: false,
    },
  ],
  resistor: (given) => {
    const ohms = given.orNull("ohms");
    return [given.load(ohms === null ? {} : { law: "resistor", amount: ohms }, "1", "2")];
  },
  "ground-strip": posts,
  "bus-bar": posts,
  chassis: (given) => [given.conductor(given.at("g"), CHASSIS, given.number("jointMilliohm", 0))],
  splice: () => [],
  plug: (given) =>
    Array.from({ length: given.number("ways", 4) }, (_, at) =>
      given.conductor(given.at(`a${at + 1}`), given.at(`b${at + 1}`), given.number("milliohm", 5)),
    ),
  converter: (given) => [
    {
      type: "converter",
      a: given.at("in+"),
      b: given.at("in-"),
      outA: given.at("out+"),
      outB: given.at("out-"),
      volts: given.number("outV", 12),
      efficiency: given.number("efficiency", 0.85),
      maxA: given.orNull("maxA"),
      of: given.id,
    },
  ],
};

function fuse(
  given: Given,
  a: string,
  b: string,
  name: string,
  ohm: number,
  closed: boolean,
  recloses: boolean,
): Element {
  const ratingA = given.orNull("ratingA");
  return {
    type: "fuse",
    a: given.at(a),
    b: given.at(b),
    ohm,
    of: given.id,
    name,
    ratingA,
    closed,
    isWay: closed || recloses,
  };
}

function suppression(given: Given): Element[] {
  if (given.said("suppression") === "resistor") return [given.load({ law: "resistor", amount: 680 }, "86", "85")];
  if (given.said("suppression") !== "diode") return [];
  return [
    { type: "diode", a: given.at("85"), b: given.at("86"), volts: 0.7, ohm: 0.01, of: given.id, suppresses: true },
  ];
}

/** The elements of a part; `isUpper`: its negative is wired straight to another battery's positive. */
export function elementsOf(part: Part, nominalV: number, isUpper: boolean): Element[] {
  const model = KINDS[part.kind];
  if (!model) throw new RangeError(`elementsOf: no row for kind "${part.kind}" (part "${part.id}")`);
  return model(new Given(part.id, part.props ?? {}, nominalV, isUpper));
}

const POSITIONS: Readonly<Record<string, readonly string[]>> = {
  switch: ["off", "on"],
  "changeover-switch": ["off", "1", "2"],
  "key-switch": ["off", "accessory", "on", "start"],
};

/** The positions of a part's control, rest first; `null` when it has none. */
export function positionsOf(part: Part): readonly string[] | null {
  if (part.kind === "factory-feed") return part.props?.["always"] === true ? null : ["off", "on"];
  return POSITIONS[part.kind] ?? null;
}
