import { describe, expect, test } from "vitest";
import type { Document } from "../../core/document/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";
import { builtBefore, circuitPayload, compare, drawingOfRevision, withBuilt } from "../../core/papers/index.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { textsOf } from "./support/sheet-checks.ts";
import { everyElement, parseXml } from "./support/xml.ts";

const sheetAt = (revision: string) => ({ ...awningLamps.sheet, revision });
const builtA: Document = { ...awningLamps, sheet: sheetAt("A") };
const marked: Document = { ...builtA, readings: [], revisions: withBuilt(builtA, "2026-05-01") };

describe("a drawing marked as built", () => {
  test("is kept whole in the file and comes back out of it", () => {
    const read = readCircuitFile(writeCircuitFile(marked));
    if ("error" in read) throw new Error(read.error);
    expect(builtBefore(read.document)).toEqual(builtA);
  });

  test("is what the next revision is told from, until that is built too", () => {
    const drawnB: Document = { ...marked, sheet: sheetAt("B") };
    expect(builtBefore(drawnB)).toEqual(builtA);
    const builtB: Document = { ...drawnB, revisions: withBuilt(drawnB, "2026-06-01") };
    expect(builtB.revisions!.map(({ revision }) => revision)).toEqual(["A", "B"]);
    expect(builtBefore(builtB)).toEqual(builtA);
    expect(builtBefore({ ...builtB, sheet: sheetAt("C") })!.sheet!.revision).toBe("B");
  });

  test("under a revision marked before takes its place, and records neither readings nor revisions", () => {
    const again = withBuilt(marked, "2026-05-02");
    expect(again).toHaveLength(1);
    expect(again[0]).toMatchObject({ revision: "A", date: "2026-05-02" });
    expect(Object.keys(again[0]!.circuit)).not.toContain("revisions");
    expect(Object.keys(again[0]!.circuit)).not.toContain("readings");
  });

  test("leaves the code to scan as it was", () => {
    expect(circuitPayload(marked)).toBe(circuitPayload(builtA));
  });

  test("whose record was tampered with is refused with the reason, not opened", () => {
    const circuit = { ...builtA, parts: [{ id: "__proto__", kind: "nothing" }] };
    const read = drawingOfRevision({ revision: "A", circuit });
    expect("error" in read && read.error).toMatch(/parts/);
    expect(builtBefore({ ...builtA, revisions: [{ revision: "0", circuit }] })).toBeNull();
  });
});

describe("two revisions side by side", () => {
  const changed: Document = {
    ...awningLamps,
    parts: [
      ...awningLamps.parts.filter(({ id }) => id !== "la2"),
      { id: "f9", kind: "fuse", at: [40, 20], props: { ratingA: 5 } },
    ],
    wires: awningLamps.wires
      .filter(({ from, to }) => !from.startsWith("la2.") && !to.startsWith("la2."))
      .map((wire) => (wire.id === "w1" ? { ...wire, metres: 0.2 } : wire)),
  };
  const { before, after, rows } = compare(awningLamps, changed);
  const said = (svg: string) => textsOf(svg).map(({ text }) => text);

  test("show what was taken out on the one, what was added on the other, at the same scale", () => {
    expect(said(before).filter((text) => text === "REMOVED")).toHaveLength(1);
    expect(said(after).filter((text) => text === "ADDED")).toHaveLength(1);
    const box = (svg: string) => parseXml(svg).attributes["viewBox"];
    expect(box(before)).toBe(box(after));
  });

  test("draw a changed wire thick on both", () => {
    const thick = (svg: string) =>
      everyElement(parseXml(svg)).filter(
        ({ name, attributes }) => name === "path" && attributes["stroke-width"] === "1.1",
      );
    expect(thick(after)).toHaveLength(1);
    expect(thick(before).length).toBeGreaterThan(1);
    expect(rows).toContainEqual({ what: "changed", id: "w1", how: "metres: 0.15 to 0.2" });
  });

  test("differ in nothing where only things were moved on the sheet", () => {
    const moved: Document = {
      ...awningLamps,
      parts: awningLamps.parts.map((part) => ({ ...part, at: [part.at![0] + 3, part.at![1]] as const })),
    };
    expect(compare(awningLamps, moved).rows).toEqual([]);
  });
});
