import { describe, expect, test } from "vitest";
import { testSheet } from "../../core/papers/test-sheet.ts";
import { chargeStep, functionSteps, restStep } from "../../core/papers/testing/live-steps.ts";
import { ampsSteps, dropSteps } from "../../core/papers/testing/loaded-steps.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { campervan } from "./support/campervan.ts";
import { said } from "./support/said.ts";
import { sourceOf } from "./support/source.ts";

const source = sourceOf(awningLamps);
const working = source.report.situations["working"]!;
const plain = (text: string) => text.replaceAll("\u00a0", " ");
const volts = (text: string) => Number.parseFloat(/(-?[\d.]+) V/.exec(plain(text))![1]!);

test("steps come in the order they are done: dead, first power, rest, function, drop, amps, heat, drain, charge", () => {
  const titles = [...said(testSheet, source).matchAll(/^\d+ ([A-Z][^:\n]*):/gm)].map(([, title]) => title);
  const order = [
    "Dead checks",
    "First power",
    "Hot at rest",
    "Function",
    "Function",
    "Loaded drop",
    "Amps",
    "Heat",
    "Drain",
    "Charge",
  ];
  expect(titles).toEqual(order);
});

test("fault codes are asked for only where a wire of the vehicle was tapped", () => {
  expect(said(testSheet, source)).not.toContain("Fault codes");
  expect(said(testSheet, sourceOf(campervan))).toContain("Fault codes");
});

describe("hot at rest", () => {
  const rows = restStep(source).rows.map((row) => ({ ...row, red: plain(row.red), pass: plain(row.pass) }));

  test("87a is read by itself, at battery volts", () => {
    expect(rows.find(({ red }) => red === "K1 Lamp relay · 87a")).toMatchObject({
      expected: "12.60 V",
      pass: "12.1 to 13.1 V",
    });
  });

  test("what is hot only when switched must read nothing", () => {
    expect(rows.find(({ red }) => red === "K1 Lamp relay · 87")).toMatchObject({
      expected: "0.00 V",
      pass: "under 0.1 V",
    });
  });

  test("returns are not asked for", () => {
    expect(rows.filter(({ red }) => /^GS|^G1|· -$/.test(red))).toEqual([]);
  });
});

describe("function", () => {
  test("lamps stay off at rest and work when switched, at the solved volts", () => {
    const [rest, on] = functionSteps(source);
    expect(rest!.rows.map(({ expected }) => expected)).toEqual(["off, 0.00 V", "off, 0.00 V"]);
    expect(volts(on!.rows[0]!.expected)).toBeCloseTo(working.parts["la1"]!.volts!, 2);
    expect(on!.set).toBe("engine running, S1 Counter on");
  });
});

test("a lamp that is on at rest against its intent does not pass", () => {
  const wires = awningLamps.wires.map((wire) => (wire.id === "w6" ? { ...wire, from: "k1.87a" } : wire));
  const [rest] = functionSteps(sourceOf({ ...awningLamps, wires }));
  expect(rest!.rows[0]!.expected).toMatch(/^ON, /);
  expect(rest!.rows[0]!.pass).toBe("SHOULD BE OFF: put right first");
});

describe("loaded drop", () => {
  const rows = dropSteps(source)[0]!.rows.map((row) => ({ ...row, red: plain(row.red), black: plain(row.black) }));

  test("feed, load and return add up to the battery", () => {
    const feed = rows.find(({ red, black }) => red === "BAT Starter battery · +" && black === "LA1 Awning left · +")!;
    const back = rows.find(({ red }) => red === "LA1 Awning left · -")!;
    const battery = working.parts["bat"]!.volts!;
    expect(volts(feed.expected) + working.parts["la1"]!.volts! + volts(back.expected)).toBeCloseTo(battery, 1);
  });

  test("each limit leaves 0.05 V or a quarter over the expected drop", () => {
    for (const { expected, pass } of rows) expect(volts(pass) - volts(expected)).toBeGreaterThanOrEqual(0.05 - 0.011);
  });

  test("fuse and relay contact are read across", () => {
    expect(rows.map(({ red, black }) => `${red} / ${black}`)).toEqual(
      expect.arrayContaining(["F1 Lamps · 1 / F1 Lamps · 2", "K1 Lamp relay · 30 / K1 Lamp relay · 87"]),
    );
  });
});

test("amps pass within 15 % of what the fuse carries", () => {
  const [row] = ampsSteps(source)[0]!.rows;
  const amps = working.parts["f1"]!.amps!;
  const [, low, high] = /^([\d.]+) to ([\d.]+) A$/.exec(plain(row!.pass))!;
  expect([Number(low), Number(high)]).toEqual([Number((amps * 0.85).toFixed(1)), Number((amps * 1.15).toFixed(1))]);
});

test("charging is proved at the battery with the engine running", () => {
  expect(volts(chargeStep(source).rows[0]!.expected)).toBeCloseTo(working.parts["bat"]!.volts!, 2);
});

test("a circuit that does not settle promises no reading", () => {
  const report = structuredClone(source.report);
  const unsettled = {
    ...working,
    settled: false,
    parts: { ...working.parts, la1: { on: null, volts: null, amps: null } },
  };
  const shaken = { ...source, report: { ...report, situations: { ...report.situations, working: unsettled } } };
  expect(functionSteps(shaken)[1]!.rows[0]!).toMatchObject({ expected: "not settled", pass: "" });
});

test("a reading on record is printed in its row, and a wrong one says so", () => {
  const taken = (value: number) =>
    said(
      testSheet,
      sourceOf({
        ...awningLamps,
        readings: [{ situation: "dead", meter: "ohm", red: "bat.+", black: "f1.1", value, date: "2026-05-01" }],
      }),
    ).replaceAll("\n", " ");
  expect(taken(0.2)).toContain("0.2 Ω, 2026-05-01");
  expect(taken(3)).toContain("3 Ω: NOT RIGHT");
});
