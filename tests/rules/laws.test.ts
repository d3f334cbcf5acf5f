import fc from "fast-check";
import { expect, test } from "vitest";
import { applyEdits, splitAddress, type Document, type Edit } from "../../core/document/index.ts";
import { rules, type Snag } from "../../core/rules/index.ts";
import { circuit } from "../support/circuit.ts";
import { snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const WORST_FIRST = ["stop", "fix", "cant-check", "advice"];

/** Drawings as people leave them half done: a broken one with some of its wires and parts gone. */
const halfDone = fc
  .record({
    document: fc.constantFrom(...Object.values(failing).flat()),
    picks: fc.array(fc.nat(30), { maxLength: 4 }),
  })
  .map(({ document, picks }) => picks.reduce(without, document));

function without(document: Document, pick: number): Document {
  const ids = [
    ...document.wires.map(({ id }): Edit => ({ op: "remove-wire", id })),
    ...document.parts.filter(({ id }) => !isOperated(document, id)).map(({ id }): Edit => ({ op: "remove-part", id })),
  ];
  const edit = ids[pick % Math.max(ids.length, 1)];
  return edit ? applyEdits(document, [edit]) : document;
}

/** A situation names its controls, so those stay. */
function isOperated({ situations = [] }: Document, id: string): boolean {
  return situations.some(({ set = {} }) => id in set);
}

function places({ parts, wires }: Document): Set<string> {
  return new Set([...parts, ...wires].map(({ id }) => id));
}

function isWellFormed(snag: Snag, document: Document): void {
  const known = places(document);
  expect(snag.at.length).toBeGreaterThan(0);
  expect(snag.at.filter((place) => !known.has(place) && !known.has(splitAddress(place)[0]))).toEqual([]);
  expect(snag.text).toMatch(/^[\p{Lu}\d].*[.!]$/u);
  expect(snag.text).not.toMatch(/undefined|NaN|null|Infinity|unknown|\[object/);
  expect(Object.values(snag.measure).filter((value) => typeof value === "number" && !Number.isFinite(value))).toEqual(
    [],
  );
  for (const { edits } of snag.remedies) expect(() => snagsOf(applyEdits(document, edits))).not.toThrow();
}

test("whatever is missing, each finding names places of the drawing in whole sentences, and its remedies can be carried out", () => {
  fc.assert(
    fc.property(halfDone, (document) => {
      const snags = snagsOf(document);
      for (const snag of snags) isWellFormed(snag, document);
      const ranks = snags.map(({ level }) => WORST_FIRST.indexOf(level));
      expect(ranks).toEqual(ranks.toSorted((one, other) => one - other));
    }),
    { numRuns: 60 },
  );
});

test("a place is told once by each rule", () => {
  for (const document of Object.values(failing).flat()) {
    const told = snagsOf(document).map(({ rule, at }) => `${rule} ${at.join()}`);
    expect(told.filter((one, index) => told.indexOf(one) !== index)).toEqual([]);
  }
});

test("an empty drawing and loose parts are nothing to complain of", () => {
  expect(snagsOf(circuit([]))).toEqual([]);
  expect(snagsOf(circuit(["bat:battery", "k1:relay", "la1:lamp", "p1:plug", "x1:block"]))).toEqual([]);
});

test("each rule says what it means and where its limit comes from", () => {
  for (const { id, about, source } of rules) {
    expect(id).toMatch(/^[a-z-]+$/);
    expect(about).toMatch(/^[\p{Lu}\d].{20,}\.$/u);
    expect(source).toMatch(/\S{3}/);
  }
});
