import fc from "fast-check";
import { expect, test } from "vitest";
import { circuitInSvg, circuitMetadata } from "../../core/papers/circuit-in-svg.ts";
import { writeCircuitFile } from "../../core/file/index.ts";
import type { Document } from "../../core/document/index.ts";
import { parseXml } from "./support/xml.ts";

const empty: Document = { format: "groundstrap", version: 1, parts: [], wires: [] };
const wrapped = (document: Document) => `<svg xmlns="http://www.w3.org/2000/svg">${circuitMetadata(document)}</svg>`;

test("any text in a circuit survives the way into an SVG and back", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), fc.string({ unit: "binary" }), (title, notes) => {
      const document: Document = { ...empty, sheet: { title, notes } };
      const svg = wrapped(document);
      expect(/^[\n\u0020-\u007e]*$/.test(svg)).toBe(true);
      expect(JSON.parse(circuitInSvg(svg)!)).toEqual(JSON.parse(JSON.stringify(document)));
      parseXml(svg);
    }),
  );
});

test("it is found after another program changed prefix, escapes and space", () => {
  const svg = wrapped({ ...empty, sheet: { title: 'a "b" & <c> é' } });
  const rewritten = svg
    .replaceAll("gs:circuit", "ns0:circuit")
    .replace("xmlns:gs=", "xmlns:ns0=")
    .replaceAll("&#38;", "&amp;")
    .replaceAll("&#60;", "&lt;")
    .replaceAll("&#233;", "&#xE9;");
  expect(circuitInSvg(rewritten)).toBe(circuitInSvg(svg));
  expect(circuitInSvg(svg.replaceAll('"title"', "&quot;title&quot;"))).toBe(circuitInSvg(svg));
});

test("an SVG without a circuit of ours gives none", () => {
  expect(circuitInSvg("")).toBeNull();
  expect(
    circuitInSvg('<svg xmlns="http://www.w3.org/2000/svg"><circuit>{"format":"groundstrap"}</circuit></svg>'),
  ).toBeNull();
  expect(circuitInSvg(wrapped(empty).replace(writeCircuitFile(empty), "{ not json"))).toBeNull();
  expect(circuitInSvg(wrapped(empty).replace(writeCircuitFile(empty), "[1]"))).toBeNull();
});

test("hostile text neither throws nor takes long", () => {
  const pieces = fc.constantFrom(
    "<gs:circuit",
    ">",
    "</",
    "&#",
    "&#99999999;",
    "&amp;",
    "urn:groundstrap:circuit:1",
    '{"a":1}',
    "circuit",
    "<",
    '"',
    " ",
  );
  fc.assert(
    fc.property(fc.array(fc.oneof(pieces, fc.string()), { maxLength: 60 }), (parts) => {
      const answer = circuitInSvg(parts.join(""));
      expect(answer === null || typeof JSON.parse(answer) === "object").toBe(true);
    }),
  );
  const started = performance.now();
  expect(circuitInSvg(`urn:groundstrap:circuit:1${"<gs:circuit ".repeat(200_000)}`)).toBeNull();
  expect(circuitInSvg(`urn:groundstrap:circuit:1${"<gs:circuit>{".repeat(200_000)}<`)).toBeNull();
  expect(performance.now() - started).toBeLessThan(2000);
});
