import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { analyse, type Analysis } from "../../core/analyse.ts";
import type { Document } from "../../core/document/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";
import type { SituationReading } from "../../core/readings/index.ts";
import { randomCircuit } from "./random-circuits.ts";

/** Drawings looked at in all; set RUNS for a longer look. */
const RUNS = Number(process.env["RUNS"] ?? 1000);
/** A busy machine is no reason to fail. */
const PATIENCE_MS = Math.max(120_000, RUNS * 100);
const small = randomCircuit({ chains: { min: 1, max: 2 }, strays: 4, unknowns: true, ownSymbols: true });
const middling = randomCircuit({ chains: { min: 3, max: 6 }, strays: 5, unknowns: true, ownSymbols: true });
const large = randomCircuit({ chains: { min: 15, max: 60 }, strays: 2, unknowns: true, ownSymbols: true });

describe("whatever is drawn", () => {
  test.each([
    ["small", small, Math.ceil(RUNS * 0.6)],
    ["middling", middling, Math.ceil(RUNS * 0.1)],
    ["large", large, Math.ceil(RUNS * 0.004)],
  ])(
    "the report is finite plain JSON, and every settled situation balances: %s drawings",
    (_, drawings, numRuns) => {
      fc.assert(
        fc.property(drawings, (document) => {
          const { study, report } = analyse(document);
          expect(unsoundValues(report)).toEqual([]);
          for (const situation of study.situations) expect(imbalances(study, situation)).toEqual([]);
        }),
        { numRuns },
      );
    },
    PATIENCE_MS,
  );

  test(
    "saving and opening gives the very document back",
    () => {
      fc.assert(
        fc.property(middling, (document) => {
          const placed = opened(writeCircuitFile(document));
          expect(opened(writeCircuitFile(placed))).toEqual(placed);
          expect(withoutPlaces(placed)).toEqual(withoutPlaces(document));
        }),
        { numRuns: Math.ceil(RUNS * 0.2) },
      );
    },
    PATIENCE_MS,
  );

  test(
    "the same drawing always gives the same report, and nothing in it is changed",
    () => {
      fc.assert(
        fc.property(small, (document) => {
          const before = JSON.stringify(document);
          const first = JSON.stringify(analyse(document).report);
          expect(JSON.stringify(document)).toBe(before);
          expect(JSON.stringify(analyse(structuredClone(document)).report)).toBe(first);
        }),
        { numRuns: Math.ceil(RUNS * 0.1) },
      );
    },
    PATIENCE_MS,
  );
});

function opened(text: string): Document {
  const result = readCircuitFile(text);
  if (!result.ok) throw new Error(result.error);
  return result.document;
}

function withoutPlaces(document: Document): unknown {
  return { ...document, parts: document.parts.map((part) => ({ ...part, at: undefined })) };
}

/** Paths of numbers that are not finite, of values that JSON would drop, and of texts that show such. */
function unsoundValues(value: unknown, path = "report"): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value === "string") return /NaN|Infinity|undefined|\[object/.test(value) ? [`${path} says ${value}`] : [];
  if (value === undefined || typeof value === "function") return [`${path} is ${typeof value}`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    // An edit that takes a setting back says so with `undefined`.
    inner === undefined && path.includes(".edits.") ? [] : unsoundValues(inner, `${path}.${key}`),
  );
}

/** Nodes at which the amps of wires and elements, read off the report's own numbers, do not cancel; and lost or found watts. */
function imbalances({ netlist }: Analysis["study"], situation: SituationReading): string[] {
  if (!situation.settled) return [];
  const { solution } = situation;
  const sum = new Float64Array(netlist.nodeCount);
  const size = new Float64Array(netlist.nodeCount);
  const flow = (from: number, to: number, amps: number) => {
    for (const [node, sign] of [
      [from, -1],
      [to, 1],
    ] as const) {
      sum[node]! += sign * amps;
      size[node]! += Math.abs(amps);
    }
  };
  for (const wire of netlist.wires) flow(wire.from.node, wire.to.node, situation.wires[wire.wire.id]!.amps!);
  for (const { spec, branch, a, b, outA, outB } of netlist.elements) {
    if (branch < 0) continue;
    const amps = solution.branchA[branch]!;
    if (spec.type === "source") flow(b, a, amps);
    else flow(a, b, amps);
    if (spec.type === "converter") flow(outB, outA, solution.outputA[branch]!);
  }
  const unbalanced = [...sum.keys()].filter((node) => Math.abs(sum[node]!) > 1e-9 + 1e-9 * size[node]!);
  const watts = size.reduce((total, amps) => total + amps, 0) * 30;
  return [
    ...unbalanced.map((node) => `${situation.id}: ${sum[node]} A are left over at node ${node} of ${size[node]}`),
    ...(solution.residualW > 1e-6 + 1e-9 * watts ? [`${situation.id}: ${solution.residualW} W are left over`] : []),
  ];
}
