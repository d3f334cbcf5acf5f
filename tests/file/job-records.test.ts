import { expect, test } from "vitest";
import { applyEdits, type Document } from "../../core/document/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";

const document: Document = {
  format: "groundstrap",
  version: 1,
  parts: [{ id: "bat", kind: "battery", at: [0, 0] }],
  wires: [],
  readings: [
    { situation: "rest", meter: "V", red: "bat.+", black: "bat.-", value: 12.61, date: "2026-11-26" },
    { situation: "dead", meter: "ohm", red: "bat.+", value: 0.2 },
  ],
  revisions: [
    { revision: "A", date: "2026-05-01", circuit: { format: "groundstrap", version: 1, parts: [], wires: [] } },
  ],
};

test("readings and built revisions survive saving and opening, with keys nobody knows", () => {
  const odd = { ...document, readings: [{ ...document.readings![0]!, meterUsed: "the yellow one" }] };
  expect(readCircuitFile(writeCircuitFile(odd))).toEqual({ ok: true, document: odd });
  expect(readCircuitFile(writeCircuitFile(document))).toEqual({ ok: true, document });
});

test.each([
  ["a value that is no number", { readings: [{ situation: "rest", meter: "V", red: "bat.+", value: "12" }] }],
  ["a value out of all range", { readings: [{ situation: "rest", meter: "V", red: "bat.+", value: 1e300 }] }],
  ["a meter nobody has", { readings: [{ situation: "rest", meter: "bar", red: "bat.+", value: 1 }] }],
  ["a revision without its circuit", { revisions: [{ revision: "A" }] }],
  ["more revisions than a hundred", { revisions: Array.from({ length: 101 }, () => document.revisions![0]) }],
])("a file with %s is refused", (_what, records) => {
  const read = readCircuitFile(JSON.stringify({ ...document, ...records }));
  expect("error" in read ? read.error : "").toMatch(/^(readings|revisions)/);
});

test("records are set and taken out by an edit", () => {
  const without = applyEdits(document, [{ op: "set-records", change: { readings: undefined, revisions: [] } }]);
  expect(without).not.toHaveProperty("readings");
  expect(without.revisions).toEqual([]);
});
