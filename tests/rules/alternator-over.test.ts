import { expect, test } from "vitest";
import type { SystemSettings } from "../../core/document/index.ts";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const adding = (amps: number, system: SystemSettings, engine = "running") =>
  circuit(`bat:battery > f1:fuse 20A > s1:switch > r1:load amps=${amps} model=constant-current > ground`, {
    system,
    situations: { driving: { s1: "on", engine } },
  });

test("base and added load over 80 % of the alternator", () => {
  expect(snagsOf(failing["alternator-over"]![0]!, "alternator-over")).toMatchObject([
    { level: "fix", at: ["bat"], measure: { limitA: 48, situation: "driving" } },
  ]);
});

test("a sum equal to 80 % is within it", () => {
  expect(placesOf(adding(8, { alternatorA: 60, baseLoadA: 40 }), "alternator-over")).toEqual([]);
  expect(placesOf(adding(8.001, { alternatorA: 60, baseLoadA: 40 }), "alternator-over")).toEqual(["bat"]);
});

test("without both figures nothing is said", () => {
  expect(placesOf(adding(50, { alternatorA: 60 }), "alternator-over")).toEqual([]);
  expect(placesOf(adding(50, { baseLoadA: 40 }), "alternator-over")).toEqual([]);
});

test("where no situation runs the engine, the load of all of them counts", () => {
  expect(placesOf(adding(10, { alternatorA: 60, baseLoadA: 40 }, "off"), "alternator-over")).toEqual(["bat"]);
});
