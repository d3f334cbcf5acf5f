import { expect, test } from "vitest";
import { loadSheet } from "../../core/papers/load-sheet.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { campervan } from "./support/campervan.ts";
import { said } from "./support/said.ts";
import { sourceOf } from "./support/source.ts";

const source = sourceOf(awningLamps);
const text = said(loadSheet, source);

test("each load shows its amps and volts, and the sum below them", () => {
  const { la1, la2 } = source.report.situations["working"]!.parts;
  const [, one, other, sum] =
    /LA1 Awning left\n([\d.]+) A at [\d.]+ V\nLA2 Awning right\n([\d.]+) A at [\d.]+ V\nSum\n([\d.]+) A/.exec(text)!;
  expect(Number(one)).toBeCloseTo(la1!.amps!, 2);
  expect(Number(other)).toBeCloseTo(la2!.amps!, 2);
  expect(Number(sum)).toBeCloseTo(la1!.amps! + la2!.amps!, 2);
});

test("each fuse shows its amps and share of its rating", () => {
  expect(text).toMatch(/F1 Lamps, 15 A\n5\.5 A, 37 %/);
});

test("the alternator is left with 80 % of its output less the vehicle's own and the added load", () => {
  expect(text).toMatch(/Alternator 90 A; for long 80 % of it, 72 A\./);
  // 72 − 30 − 5.5
  expect(text).toContain("36.5 A left.");
});

test("too much load is said to be short", () => {
  const small = sourceOf({ ...awningLamps, system: { alternatorA: 40, baseLoadA: 30 } });
  expect(said(loadSheet, small)).toContain("SHORT by 3.5 A: the battery goes down while you work.");
});

test("an alternator nobody measured is not guessed", () => {
  expect(said(loadSheet, sourceOf(campervan))).toMatch(
    /Can't say: the alternator's output and what the vehicle draws by itself is\s?\n?\s?not stated\./,
  );
});

test("key-out drain and days to half charge are given", () => {
  const summary = { ...source.report.summary, restDrainA: 0.14, daysToHalf: 10.4 };
  expect(said(loadSheet, { ...source, report: { ...source.report, summary } })).toContain(
    "Drain with everything off: 140 mA. Half charge in about 10 days.",
  );
});
