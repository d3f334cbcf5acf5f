import { describe, expect, test } from "vitest";
import { analyse } from "../../core/analyse.ts";
import type { Document } from "../../core/document/index.ts";
import { EXAMPLES } from "../../core/examples/index.ts";
import { paperFiles, paperOf, papers } from "../../core/papers/index.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { troubleOnPages } from "./support/sheet-checks.ts";
import { a5, a5Size, sourceOf } from "./support/source.ts";
import { campervan } from "./support/campervan.ts";

const hostile = `</title></text></svg><script>alert("1")</script>&amp;<!--]]>'\u0000\u001b\ud800\ufffe\u202e=1+1`;
const attacked: Document = {
  ...awningLamps,
  sheet: {
    title: hostile.repeat(100),
    vehicle: hostile,
    drawnBy: hostile,
    revision: hostile,
    date: hostile,
    notes: hostile,
  },
  parts: awningLamps.parts.map((part) => ({ ...part, label: `${hostile} ${"x".repeat(5000)}` })),
  wires: awningLamps.wires.map((wire) => ({
    ...wire,
    label: hostile,
    colour: hostile,
    ends: { from: { terminal: hostile, stud: hostile } },
  })),
  situations: [{ id: "working", name: hostile, set: { engine: "running", s1: "on" } }],
};
// ISO 216 for A sizes; ANSI/ASME Y14.1 for Letter (11 by 8.5 in) and its half.
const a5Only = [["A5", 210, 148]] as const;
const everySheet = [...a5Only, ["A4", 297, 210], ["Letter", 279.4, 215.9], ["Half-letter", 215.9, 139.7]] as const;
const sources = [
  { name: "awning lamps", source: sourceOf(awningLamps), sheets: everySheet },
  { name: "a camper with a gap in every list", source: sourceOf(campervan), sheets: everySheet },
  { name: "hostile text", source: sourceOf(attacked), sheets: a5Only },
  {
    name: "an empty sheet",
    source: sourceOf({ format: "groundstrap", version: 1, parts: [], wires: [] }),
    sheets: a5Only,
  },
];

describe.each(papers)("$kind", (paper) => {
  test.each(sources)(
    "of $name prints within the safe area of every sheet, nothing over anything else",
    ({ source, sheets }) => {
      for (const [size, long, short] of sheets) {
        for (const landscape of [true, false]) {
          const [widthMm, heightMm] = landscape ? [long, short] : [short, long];
          const pages = paper.pages(source, { size, landscape, words: "ground" });
          expect(troubleOnPages(pages, { widthMm, heightMm })).toEqual([]);
        }
      }
    },
  );

  test("gives the same bytes for the same drawing, and its first page when asked for one file", () => {
    const [one, other] = [sourceOf(campervan), sourceOf(structuredClone(campervan))];
    expect(paper.pages(one, a5)).toEqual(paper.pages(other, a5));
    expect(paper.make(one, a5)).toBe(paper.make(other, a5));
    const [first] = paperFiles(paper, one, a5, paper.extension);
    expect(first).toEqual({ suffix: "", text: paper.make(one, a5) });
  });

  test("is found by its kind and says what it is for", () => {
    expect(paperOf(paper.kind)).toBe(paper);
    expect(paper.about).toMatch(/^[A-Z].*\.$/);
  });
});

test.each(EXAMPLES)("every paper of the demo $name prints on A5", ({ document }) => {
  const { study, report } = analyse(document);
  const source = { document, netlist: study.netlist, report };
  for (const paper of papers) expect(troubleOnPages(paper.pages(source, a5), a5Size)).toEqual([]);
});

test("a kind nobody prints has no paper", () => {
  expect(paperOf("poster")).toBeNull();
});

test("a paper of many pages numbers them", () => {
  const pages = paperOf("test-sheet")!.pages(sourceOf(campervan), a5);
  expect(pages.length).toBeGreaterThan(2);
  for (const [at, page] of pages.entries()) expect(page).toContain(`>Page ${at + 1} of ${pages.length}<`);
  expect(troubleOnPages(pages, a5Size)).toEqual([]);
});
