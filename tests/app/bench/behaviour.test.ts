import { describe, expect, it, test } from "vitest";
import {
  RECIPES,
  withCoilNamed,
  withoutElement,
  withPositions,
  withRecipe,
  withTerminalNamed,
} from "../../../app/bench/behaviour.ts";
import { troublesOf } from "../../../app/bench/check-symbol.ts";
import { BLANK_SYMBOL, type BenchSymbol } from "../../../app/bench/symbol.ts";
import { tryOut } from "../../../app/bench/try-out.ts";
import { buzzer } from "./buzzer.ts";

const empty: BenchSymbol = { ...BLANK_SYMBOL, name: "X", terminals: buzzer.terminals };
const recipe = (label: string) => RECIPES.find((one) => one.label === label)!;
const put = (symbol: BenchSymbol, ...labels: readonly string[]) =>
  labels.reduce((made, label) => withRecipe(made, recipe(label)), symbol);
const across = { leads: { "1": "plus", "2": "minus" }, position: null, nominalV: 12 } as const;

describe("putting elements inside", () => {
  it.each([[["Load", "Fuse"]], [["Fuse", "Load"]]])(
    "puts a fuse and a load in line, whichever comes first: %j",
    (labels) => {
      const { elements } = put(empty, ...labels);
      expect(elements.find(({ type }) => type === "protection")).toMatchObject({ a: "1", b: "$a" });
      expect(elements.find(({ type }) => type === "load")).toMatchObject({ a: "$a", b: "2" });
    },
  );

  it("gives a symbol with a switch a control of its own", () => {
    const switched = put(empty, "Load", "Switch");
    expect(switched.positions).toEqual(["off", "on"]);
    expect(troublesOf(switched)).toEqual([]);
  });

  it("ties a contact to the coil it comes with, and leaves its far end to say", () => {
    const { elements } = put(empty, "Coil with a contact");
    expect(elements).toMatchObject([
      { type: "coil", name: "k1" },
      { type: "contact", coil: "k1", a: "1", b: "" },
    ]);
    expect(troublesOf(put(empty, "Coil with a contact"))).toEqual([
      "Contact of coil k1 (2): say where its other end goes.",
    ]);
  });

  test.each(RECIPES.filter(({ label }) => label !== "Coil with a contact").map(({ label }) => label))(
    "makes a symbol a file takes of one %s",
    (label) => {
      const made = put({ ...empty, terminals: [...empty.terminals] }, label);
      expect(troublesOf(made)).toEqual([]);
    },
  );
});

describe("names inside a symbol", () => {
  it("follow a terminal that gets another name", () => {
    expect(withTerminalNamed(buzzer, 0, "+").elements[0]).toMatchObject({ a: "+", b: "$a" });
  });

  it("follow a coil that gets another name, and are left open when it goes", () => {
    const coil = put(empty, "Coil with a contact");
    expect(withCoilNamed(coil, 0, "main").elements[1]).toMatchObject({ coil: "main" });
    expect(withoutElement(coil, 0).elements).toMatchObject([{ type: "contact", coil: "" }]);
  });

  it("forget positions that are gone", () => {
    const switched = withPositions(put(empty, "Switch"), ["off", "high"]);
    expect(switched.elements[0]).toMatchObject({ positions: [] });
  });
});

describe("what is wrong with a symbol", () => {
  test.each<[string, Partial<BenchSymbol>, RegExp]>([
    ["no terminal", { terminals: [], elements: [] }, /has no terminal/],
    ["one name twice", { terminals: [buzzer.terminals[0]!, { ...buzzer.terminals[1]!, name: "1" }] }, /called 1/],
    [
      "one spot twice",
      { terminals: [buzzer.terminals[0]!, { ...buzzer.terminals[1]!, at: [0, 0] }] },
      /lie on each other/,
    ],
    ["a terminal that is gone", { terminals: [buzzer.terminals[0]!] }, /terminal 2, which is not there/],
    ["two ends in one place", { elements: [{ type: "load", a: "1", b: "1" }] }, /both its ends/],
    ["a setting out of range", { elements: [{ type: "load", a: "1", b: "2", watts: -4 }] }, /watts: got -4/],
  ])("is said of %s", (_name, change, words) => {
    expect(troublesOf({ ...buzzer, ...change }).join("\n")).toMatch(words);
  });
});

describe("trying a symbol", () => {
  // A resistance of 6 W at 12 V is 24 ohm; the source of 12.6 V has 5 milliohm, its two leads 0.1 each, a fuse of 2 A 53.5.
  const expectedA = 12.6 / (24 + 0.005 + 0.0002 + 0.0535);

  it("shows the amps and volts it makes of a battery", () => {
    const { terminals, inside, settled } = tryOut(buzzer, across);
    expect(settled).toBe(true);
    expect(terminals["1"]?.amps).toBeCloseTo(expectedA, 6);
    expect(terminals["2"]?.amps).toBeCloseTo(-expectedA, 6);
    expect(inside.map(({ text }) => text)).toEqual([
      "Fuse: 0.524 A, 26.2 % of its 2 A",
      "Load: works, 12.6 V, 0.524 A, 6.58 W",
    ]);
  });

  it("says when the fuse would blow", () => {
    const small = { ...buzzer, elements: [{ ...buzzer.elements[0]!, ratingA: 0.5 }, buzzer.elements[1]!] };
    expect(tryOut(small, across).inside[0]).toMatchObject({ isBad: true });
  });

  it("follows the symbol's own control", () => {
    const switched = put(buzzer, "Switch");
    expect(tryOut(switched, { ...across, position: "off" }).terminals["1"]?.amps).toBeCloseTo(0, 9);
    expect(tryOut(switched, { ...across, position: "on" }).terminals["1"]?.amps).toBeGreaterThan(0.5);
  });

  it("joins nothing to a terminal without a lead", () => {
    const open = tryOut(buzzer, { ...across, leads: {} });
    expect(open.terminals["1"]).toEqual({ volts: null, amps: 0 });
  });

  it("says that a coil that cuts its own current never settles", () => {
    const chatters: BenchSymbol = {
      ...empty,
      elements: [
        { type: "coil", name: "k1", a: "$a", b: "2" },
        { type: "contact", coil: "k1", closedWhen: "released", a: "1", b: "$a" },
      ],
    };
    expect(tryOut(chatters, across).settled).toBe(false);
  });
});
