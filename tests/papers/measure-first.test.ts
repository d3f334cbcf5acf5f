import { expect, test } from "vitest";
import { measureGroups } from "../../core/papers/lists/index.ts";
import { measureFirst } from "../../core/papers/measure-first.ts";
import { campervan } from "./support/campervan.ts";
import { said } from "./support/said.ts";
import { sourceOf } from "./support/source.ts";

const groups = measureGroups(sourceOf(campervan));
const rowsOf = (title: string) => groups.find((group) => group.title === title)?.rows ?? [];
const asked = (title: string) => rowsOf(title).map(({ how }) => how);

test("a factory feed is asked for volts, allowance, watching and pulsing", () => {
  expect(asked("Wires of the vehicle")).toEqual([
    "NOT MEASURED: volts while it is on",
    "volts while it is off, key out and key on",
    "how much more the vehicle's maker allows on it",
    "does a module watch it for failed bulbs?",
    "is it pulsed to dim it? Meter flickers, or an old bulb tells",
  ]);
  expect(rowsOf("Wires of the vehicle")[0]!.expect).toBe("12.6 V engine off, 13.8 V running");
});

test("the battery's sensor and the alternator are asked for", () => {
  expect(asked("Battery and charging")).toContain("is there a battery sensor or a breaker on the negative post?");
  expect(asked("Battery and charging")).toContain("rated output on its plate");
});

test("metal nobody looked at, wires nobody measured, lengths and sizes nobody gave are on it", () => {
  expect(rowsOf("The vehicle's metal").map(({ what }) => what)).toEqual(["CH Rib behind seat"]);
  expect(rowsOf("Our own wires").map(({ what, how }) => [what.split(",")[0], how])).toEqual([
    ["w5", "length along the route"],
    ["w6", "NOT MEASURED: that it is the wire it is taken for"],
    ["w14", "size, printed on it or by its strands"],
  ]);
});

test("what the rules could not check is on it", () => {
  const gap = {
    rule: "under-rated",
    level: "cant-check",
    at: ["sp"],
    measure: {},
    text: "Enter its rating.",
    remedies: [],
  } as const;
  expect(said(measureFirst, sourceOf(campervan, [gap]))).toContain("Enter its rating.");
});

test("a drawing without gaps says so", () => {
  expect(
    said(
      measureFirst,
      sourceOf({ format: "groundstrap", version: 1, system: { alternatorA: 90, baseLoadA: 30 }, parts: [], wires: [] }),
    ),
  ).toContain("The drawing leaves nothing open.");
});
