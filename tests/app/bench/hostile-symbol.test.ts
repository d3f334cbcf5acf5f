import { describe, expect, test } from "vitest";
import { symbolsIn } from "../../../app/bench/symbol-file.ts";
import { tryOut } from "../../../app/bench/try-out.ts";
import { analyse } from "../../../core/analyse.ts";
import type { Document } from "../../../core/document/index.ts";
import { readCircuitFile } from "../../../core/file/index.ts";

const terminals = [
  { name: "1", at: [0, 0], exit: "left" },
  { name: "2", at: [4, 0], exit: "right" },
];
/** A battery across every one of the symbols. */
const fileOf = (props: object, count = 1) => ({
  format: "groundstrap",
  version: 1,
  parts: [
    { id: "b1", kind: "battery" },
    ...Array.from({ length: count }, (_, at) => ({ id: `n${at}`, kind: "custom", props: { terminals, ...props } })),
  ],
  wires: Array.from({ length: count }, (_, at) => [
    { id: `p${at}`, from: "b1.+", to: `n${at}.1` },
    { id: `m${at}`, from: `n${at}.2`, to: "b1.-" },
  ]).flat(),
});
const many = <T>(make: (at: number) => T) => Array.from({ length: 100 }, (_, at) => make(at)).flat();

/** A hundred coils, each broken by the contact of the next. */
const chattering = many((at) => [
  { type: "coil", name: `k${at}`, a: `$c${at}`, b: "2" },
  { type: "contact", coil: `k${(at + 1) % 100}`, closedWhen: "released", a: "1", b: `$c${at}` },
]);
/** A hundred loads of constant power in one row, which no voltage satisfies. */
const starving = many((at) => [
  { type: "load", law: "power", watts: 5000, a: at === 0 ? "1" : `$r${at}`, b: at === 99 ? "2" : `$r${at + 1}` },
  { type: "diode", a: `$r${at + 1}`, k: "1", forwardV: 0, milliohm: 0 },
]);
/** Sources against one another without any resistance. */
const contradicting = many((at) => [
  { type: "source", plus: "1", minus: "2", restV: at, runningV: at, milliohm: 0 },
  { type: "link", a: "1", b: "2" },
]);
const positions = ["off", ...Array.from({ length: 11 }, (_, at) => `p${at}`)];
const switching = many((at) => [
  { type: "contact", positions: [positions[1 + (at % 11)]], a: "1", b: `$s${at}` },
  { type: "load", watts: 5, a: `$s${at}`, b: "2" },
]);

describe("a symbol from a hostile file", () => {
  test.each<[string, object, number]>([
    ["coils that break one another", { elements: chattering }, 1],
    ["loads no voltage satisfies", { elements: starving }, 1],
    ["sources against one another", { elements: contradicting }, 1],
    ["eight controls of twelve positions", { elements: switching, positions }, 8],
  ])("is analysed in a bounded time: %s", (_name, props, count) => {
    const read = readCircuitFile(JSON.stringify(fileOf(props, count)));
    if ("error" in read) throw new Error(read.error);
    const started = performance.now();
    const { report } = analyse(read.document);
    // A worker silent for 20 s is given up.
    expect(performance.now() - started).toBeLessThan(15_000);
    expect(JSON.stringify(report)).not.toContain("NaN");
  });

  test.each<[string, readonly object[]]>([
    ["coils that break one another", chattering],
    ["loads no voltage satisfies", starving],
    ["sources against one another", contradicting],
  ])("is tried on the Bench without holding up the page: %s", (_name, elements) => {
    const [symbol] = symbolsIn(fileOf({ elements }) as unknown as Document);
    const started = performance.now();
    const { terminals } = tryOut(symbol!, { leads: { "1": "plus", "2": "minus" }, position: null, nominalV: 12 });
    expect(performance.now() - started).toBeLessThan(2000);
    expect(JSON.stringify(terminals)).not.toContain("NaN");
  });

  test.each<[string, object]>([
    ["a name that is no text", { name: { toString: "x" }, words: 7, letter: "__proto__" }],
    ["a very long name", { name: "x".repeat(9000), words: "y".repeat(9000) }],
    ["names of what the language keeps", { name: "constructor", letter: "toString", was: "1", onload: "alert(1)" }],
  ])("comes to the Bench as plain words: %s", (_name, props) => {
    const read = readCircuitFile(JSON.stringify(fileOf(props)));
    if ("error" in read) throw new Error(read.error);
    const [symbol] = symbolsIn(read.document);
    expect(symbol).toMatchObject({ letter: "n", elements: [], drawing: [] });
    expect(symbol!.name.length).toBeLessThanOrEqual(60);
    expect(symbol!.words.length).toBeLessThanOrEqual(200);
  });
});
