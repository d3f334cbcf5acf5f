import type { Part } from "../../core/document/index.ts";
import { readValue } from "./wire-notation.ts";

/** One item of a chain: where it is entered and left, and the part itself where the item draws it. */
export interface Item {
  readonly id: string;
  readonly enters: string;
  readonly leaves: string;
  readonly part: Part | null;
}

interface Word {
  readonly kind: string;
  readonly enters: string;
  readonly leaves: string;
  /** Setting that an amount of this unit means. */
  readonly units: Readonly<Record<string, string>>;
  readonly props?: Readonly<Record<string, unknown>>;
}

const use = { enters: "+", leaves: "-" };
const through = { enters: "1", leaves: "2" };

/** What may stand at the start of an item. */
const WORDS: Readonly<Record<string, Word>> = {
  battery: {
    kind: "battery",
    enters: "-",
    leaves: "+",
    units: { V: "restV", Ah: "capacityAh", mohm: "internalMilliohm" },
  },
  feed: { kind: "factory-feed", enters: "out", leaves: "out", units: { A: "fuseA", V: "restV", ohm: "existingOhm" } },
  fuse: { kind: "fuse", ...through, units: { A: "ratingA" }, props: { holderA: 500 } },
  breaker: { kind: "breaker", ...through, units: { A: "ratingA" } },
  block: { kind: "fuse-block", enters: "feed", leaves: "1", units: { A: "ratedA" } },
  switch: { kind: "switch", ...through, units: { A: "ratedA" }, props: { ratedA: 500 } },
  changeover: {
    kind: "changeover-switch",
    enters: "common",
    leaves: "1",
    units: { A: "ratedA" },
    props: { ratedA: 500 },
  },
  key: { kind: "key-switch", enters: "30", leaves: "15", units: { A: "ratedA" }, props: { ratedA: 500 } },
  relay: { kind: "relay", enters: "30", leaves: "87", units: { A: "makeRatedA", ohm: "coilOhm" } },
  lamp: { kind: "lamp", ...use, units: { W: "watts", V: "ratedV" }, props: { type: "filament" } },
  led: { kind: "lamp", ...use, units: { W: "watts", V: "ratedV" }, props: { type: "led" } },
  load: { kind: "load", ...use, units: { W: "watts", V: "ratedV", ohm: "ohms" } },
  motor: { kind: "motor", ...use, units: { W: "watts", V: "ratedV" } },
  diode: { kind: "diode", enters: "A", leaves: "K", units: { A: "ratedA" }, props: { ratedA: 500 } },
  resistor: { kind: "resistor", ...through, units: { ohm: "ohms" } },
  strip: { kind: "ground-strip", ...through, units: { A: "ratedA" }, props: { ratedA: 500 } },
  bus: { kind: "bus-bar", ...through, units: { A: "ratedA" }, props: { ratedA: 500 } },
  ground: { kind: "chassis", enters: "g", leaves: "g", units: { mohm: "jointMilliohm" } },
  splice: { kind: "splice", enters: "s", leaves: "s", units: {} },
  plug: {
    kind: "plug",
    enters: "a1",
    leaves: "b1",
    units: { A: "ratedA" },
    props: { ratedA: 500, fedSide: "sockets" },
  },
  converter: { kind: "converter", enters: "in+", leaves: "out+", units: { V: "outV", A: "maxA" } },
};

/**
 * Reads "f1:fuse 10A body=glass", "k1.30/87" or "f1". A word that names a known part is that part; `kindOf` tells the kind of
 * one drawn before (its key of WORDS is found by it), `count` numbers parts without an id.
 */
export function readItem(text: string, kindOf: (id: string) => string | null, count: number): Item {
  const [head = "", ...values] = text.trim().match(/[^\s"[{]*(?:"[^"]*"|\[.*\]|\{.*\})|\S+/g) ?? [];
  const [, named, word = "", ends] = /^(?:([\w-]+):)?([\w-]+)(?:\.(.+))?$/.exec(head) ?? [];
  const [enters, leaves = enters] = ends?.split("/") ?? [];
  const known = named === undefined ? kindOf(word) : null;
  const meaning = known === null ? WORDS[word] : Object.values(WORDS).find(({ kind }) => kind === known);
  if (!meaning)
    throw new RangeError(
      `circuit: got "${text}", wanted a part drawn before or one of ${Object.keys(WORDS).join(", ")}`,
    );
  const id = known === null ? (named ?? `${word}${count + 1}`) : word;
  return {
    id,
    enters: enters ?? meaning.enters,
    leaves: leaves ?? meaning.leaves,
    part:
      known === null ? { id, kind: meaning.kind, props: { ...meaning.props, ...readValues(values, meaning) } } : null,
  };
}

function readValues(values: readonly string[], { units, kind }: Word): Record<string, unknown> {
  return Object.fromEntries(
    values.map((value): [string, unknown] => {
      const [, key, stated] = /^(\w+)=([^]*)$/.exec(value) ?? [];
      if (key !== undefined) return [key, readValue(stated ?? "")];
      const [, amount, unit = ""] = /^([\d.]+)([a-zA-Z]+)$/.exec(value) ?? [];
      const setting = units[unit];
      if (amount === undefined || setting === undefined) {
        throw new RangeError(
          `circuit: got "${value}" for a ${kind}, wanted setting=value or an amount in ${Object.keys(units).join(", ")}`,
        );
      }
      return [setting, Number(amount)];
    }),
  );
}
