import { expect, test } from "vitest";
import { faultCard } from "../../core/papers/fault-card.ts";
import { ladders, lossRows, workingSituations } from "../../core/papers/lists/index.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { campervan } from "./support/campervan.ts";
import { said } from "./support/said.ts";
import { sourceOf } from "./support/source.ts";

const source = sourceOf(awningLamps);
const losses = lossRows(source);
const offWith = (rows: readonly { lost: string; off: string }[], lost: string) =>
  rows.find((row) => row.lost === lost)?.off;

test("the fuse takes both lamps with it, also through the relay's coil", () => {
  expect(offWith(losses.devices, "F1 Lamps")).toBe("LA1 Awning left, LA2 Awning right");
  expect(offWith(losses.wires, "w4")).toBe("LA1 Awning left, LA2 Awning right");
});

test("one lamp's wire takes one lamp", () => {
  expect(offWith(losses.wires, "w6")).toBe("LA1 Awning left");
  expect(offWith(losses.wires, "w9")).toBe("LA2 Awning right");
});

test("the ground strip takes all that returns through it", () => {
  expect(offWith(losses.grounds, "GS Rear strip")).toBe("LA1 Awning left, LA2 Awning right");
});

test("a return that has a second way takes nothing", () => {
  // The battery is strapped to the vehicle as well, so the lead to the stud is not the only way back.
  expect(offWith(losses.wires, "w11")).toBeUndefined();
});

test("in a block each way takes only its own", () => {
  const van = lossRows(sourceOf(campervan));
  expect(offWith(van.devices, "BLK Block · 2")).toBe("PU Pump, LA Reverse work lamp");
  expect(offWith(van.devices, "BLK Block · 1")).toBe("FR Fridge, CV Radio supply");
});

test("the ladder falls from the battery to the lamp, and what is left stands in the return", () => {
  const [ladder] = ladders(source, workingSituations(source)[0]!);
  const names = ladder!.rungs.map(({ spot }) => spot.replaceAll("\u00a0", " "));
  expect(names).toEqual([
    "BAT Starter battery · +",
    "F1 Lamps · 1",
    "F1 Lamps · 2",
    "K1 Lamp relay · 30",
    "K1 Lamp relay · 87",
    "LA1 Awning left · +",
    "LA1 Awning left · -",
  ]);
  const volts = ladder!.rungs.map((rung) => rung.volts!);
  expect(volts.slice(0, -1).every((value, at) => at === 0 || value < volts[at - 1]!)).toBe(true);
  expect(volts.at(-1)).toBeLessThan(0.5);
});

test("the card leads from symptom to first test", () => {
  expect(said(faultCard, source)).toMatch(/Fuse blows\nunplug the load/);
});
