import { describe, expect, test } from "vitest";
import type { Document, Part } from "../../core/document/index.ts";
import { writeCircuitFile } from "../../core/file/index.ts";
import { circuitInSvg, paperFiles, type PaperOptions } from "../../core/papers/index.ts";
import { drawing } from "../../core/papers/drawing.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { textsOf, troubleOnPages } from "./support/sheet-checks.ts";
import { a5, a5Size, sourceOf } from "./support/source.ts";
import { everyElement, parseXml } from "./support/xml.ts";

const source = sourceOf(awningLamps);
const said = (pages: readonly string[]) => pages.flatMap(textsOf).map(({ text }) => text);

describe("size and legibility", () => {
  // ISO 216 for A sizes; ANSI/ASME Y14.1 for Letter (11 by 8.5 in) and its half.
  test.each<[PaperOptions["size"], number, number]>([
    ["A5", 210, 148],
    ["A4", 297, 210],
    ["Letter", 279.4, 215.9],
    ["Half-letter", 215.9, 139.7],
  ])("%s is printed true to size, both ways up, with 9 pt lettering that touches nothing", (size, long, short) => {
    for (const landscape of [true, false]) {
      const [widthMm, heightMm] = landscape ? [long, short] : [short, long];
      const pages = drawing.pages(source, { size, landscape, words: "ground" });
      expect(troubleOnPages(pages, { widthMm, heightMm })).toEqual([]);
    }
  });

  test("a long line of relays goes over several pages, each wire with its particulars and where it runs on", () => {
    const long = relayRow(24);
    const pages = drawing.pages(sourceOf(long), a5);
    expect(troubleOnPages(pages, a5Size)).toEqual([]);
    const texts = said(pages);
    const isSaid = (start: string) => texts.some((text) => text.startsWith(start));
    expect(long.parts.filter(({ id }) => !isSaid(id.toUpperCase()))).toEqual([]);
    expect(long.wires.filter(({ id }) => !isSaid(`${id} `))).toEqual([]);
    expect(texts).toContain("page 2");
  });

  test("a note on the drawing is printed in full where it stands", () => {
    const noted = { ...awningLamps, notes: [{ id: "n1", at: [2, -3], text: "Drill 8 mm, grease the edge" }] as const };
    const pages = drawing.pages(sourceOf(noted), a5);
    expect(troubleOnPages(pages, a5Size)).toEqual([]);
    expect(said(pages)).toEqual(expect.arrayContaining(["Drill 8 mm, grease the", "edge"]));
  });

  test("an empty sheet still makes a card", () => {
    const empty: Document = { format: "groundstrap", version: 1, parts: [], wires: [] };
    expect(troubleOnPages(drawing.pages(sourceOf(empty), a5), a5Size)).toEqual([]);
  });
});

describe("what it says", () => {
  const pages = drawing.pages(source, a5);
  const front = said(pages.slice(0, 1)).join("\n");
  const all = said(pages).join("\n");

  test("every wire carries id, colour, size and length; what nobody stated shows as a gap", () => {
    expect(front).toMatch(/w1 RD( · |\n)12 AWG · 0\.15 m/);
    expect(front).toMatch(/w3 L3 RDWH( · |\n)16 AWG · 1\.2 m/);
    expect(front).toMatch(/w7 colour \?( · |\n)14 AWG · 3\.6 m/);
    expect(front).toMatch(/w9 BK( · |\n)1\.5 mm² · length \?/);
  });

  test("terminals are named as marked on the part", () => {
    for (const mark of ["30", "85", "86", "87", "87a"]) expect(said(pages.slice(0, 1))).toContain(mark);
  });

  test("the title block names circuit, vehicle, revision, date and who drew it", () => {
    for (const text of ["Awning lamps", "Market trailer, white", "B", "2026-01-31", "T. Example"])
      expect(front).toContain(text);
  });

  test("the fuse list gives rating, place and the largest spare its wires allow", () => {
    // The thinnest guarded wire is 16 AWG, good for 15 A by the vehicle table (field notes 5.1).
    expect(all).toMatch(/F1 Lamps\n15 A blue\n15 A\n6 in \(0\.15 m\) from BAT Starter battery · \+/);
  });

  test("the front alone names every fuse with its rating, largest spare and place", () => {
    expect(said(pages.slice(0, 1))).toContain("F1 15 A, spare 15 A, 6 in from BAT · +");
  });

  test("of more fuses than the front has room for, it says how many stand in the list", () => {
    const ways = Array.from({ length: 40 }, () => ({ ratingA: 10 }));
    const block: Part = { id: "blk", kind: "fuse-block", label: "Block", props: { ways } };
    const many = sourceOf({ ...awningLamps, parts: [...awningLamps.parts, block] });
    const first = said([drawing.make(many, a5)]);
    const named = first.filter((text) => /^BLK · \d+ 10 A, spare 10 A$/.test(text)).length;
    expect(named).toBeGreaterThan(3);
    expect(first).toContain(`${40 - named} more in the list`);
  });

  test("an unused 87a that is live is said to be so, and starred on the drawing", () => {
    expect(all).toMatch(/87a\n.*\nno wire\nHOT at rest, bare/);
    const covered = awningLamps.parts.map((part): Part =>
      part.id === "k1" ? { ...part, covers: { "87a": "covered" } } : part,
    );
    const capped = sourceOf({ ...awningLamps, parts: covered });
    const stars = (svg: string) =>
      everyElement(parseXml(svg)).filter(({ attributes }) => (attributes["d"]?.match(/ /g)?.length ?? 0) >= 30).length;
    expect(stars(pages[0]!)).toBe(stars(drawing.make(capped, a5)) + 1);
  });

  test("ground places are listed, in the person's own word", () => {
    expect(all).toContain("Grounds and returns");
    expect(all).toMatch(/GS Rear strip\nground strip, 100 A/);
    expect(said(drawing.pages(source, { ...a5, words: "earth" })).join("\n")).toMatch(
      /GS Rear strip\nearth strip, 100 A/,
    );
  });

  test("cautions and a scale bar are on it", () => {
    expect(front).toContain("Battery negative off first, fuse in last. A plan is not an inspection.");
    expect(front).toContain("30 mm; symbols at");
    expect(all).toContain("Wear eye protection near lead-acid batteries");
  });

  test("stops are not hidden", () => {
    const stop = {
      rule: "hot-bare",
      level: "stop",
      at: ["k1.87a"],
      measure: {},
      text: "87a is live and bare.",
      remedies: [],
    } as const;
    const warned = sourceOf(awningLamps, [stop]);
    expect(said(drawing.pages(warned, a5))).toContain("DO NOT POWER UP: 87a is live and bare.");
  });
});

describe("black and white", () => {
  test("always hot, hot at rest, switched and never hot differ by line", () => {
    const looks = (hot: "always" | "at-rest" | "switched" | "never") => {
      const terminals = { ...source.report.terminals, "gs.4": { ...source.report.terminals["gs.4"]!, hot } };
      const svg = drawing.make({ ...source, report: { ...source.report, terminals } }, a5);
      return everyElement(parseXml(svg))
        .filter(({ name }) => name === "path")
        .map(
          ({ attributes }) =>
            `${attributes["d"]!.slice(0, 8)} ${attributes["stroke-width"]} ${attributes["stroke-dasharray"]}`,
        )
        .join();
    };
    expect(new Set((["always", "at-rest", "switched", "never"] as const).map(looks)).size).toBe(4);
  });

  test("nothing is drawn in any colour but black and white", () => {
    for (const page of drawing.pages(source, a5)) {
      const colours = everyElement(parseXml(page)).flatMap(({ attributes }) => [
        attributes["fill"],
        attributes["stroke"],
      ]);
      expect(new Set(colours.filter((colour) => colour !== undefined))).toEqual(new Set(["#000", "#fff", "none"]));
    }
  });
});

describe("what a person typed", () => {
  const hostile = `</title></text></svg><script>alert("1")</script>&amp;<!--]]>'\u0000\u001b\ud800\ufffe\u202eabc`;
  const attacked: Document = {
    ...awningLamps,
    sheet: { title: hostile, vehicle: hostile, drawnBy: hostile, revision: hostile, date: hostile, notes: hostile },
    parts: awningLamps.parts.map((part) => ({ ...part, label: hostile })),
    wires: awningLamps.wires.map((wire) => ({ ...wire, label: hostile, colour: hostile })),
  };

  test("markup in it stays text", () => {
    expect(troubleOnPages(drawing.pages(sourceOf(attacked), a5), a5Size)).toEqual([]);
  });

  test("a title of 10 000 characters is cut, not spilled", () => {
    const long = "An endless title ".repeat(600);
    const document: Document = {
      ...awningLamps,
      sheet: { title: long, vehicle: "W".repeat(10_000), notes: "n".repeat(10_000) },
    };
    expect(troubleOnPages(drawing.pages(sourceOf(document), a5), a5Size)).toEqual([]);
  });

  test("the circuit comes back out of each page exactly, whatever is in it", () => {
    for (const page of drawing.pages(source, a5)) expect(circuitInSvg(page)).toBe(writeCircuitFile(awningLamps));
    const svg = drawing.make(sourceOf(attacked), a5);
    expect(JSON.parse(circuitInSvg(svg)!)).toEqual(JSON.parse(JSON.stringify(attacked)));
    const inside = everyElement(parseXml(svg)).find(({ name }) => name === "gs:circuit");
    expect(JSON.parse(inside!.text)).toEqual(JSON.parse(JSON.stringify(attacked)));
  });
});

test("each page becomes a file of its own", () => {
  const files = paperFiles(drawing, source, a5, ".svg");
  expect(files.map(({ suffix }) => suffix)).toEqual(["", "-2", "-3", "-4", "-5"].slice(0, files.length));
  expect(files[0]!.text).toBe(drawing.make(source, a5));
});

test("the same drawing gives the same bytes", () => {
  expect(drawing.pages(sourceOf(structuredClone(awningLamps)), a5)).toEqual(drawing.pages(sourceOf(awningLamps), a5));
});

/** Relays side by side, each with its feed and its return, far wider than any page. */
function relayRow(count: number): Document {
  const numbers = Array.from({ length: count }, (_, at) => at + 1);
  return {
    format: "groundstrap",
    version: 1,
    parts: [
      { id: "bus", kind: "bus-bar", at: [2, 2], props: { posts: 4 } },
      ...numbers.map((n) => ({
        id: `k${n}`,
        kind: "relay",
        label: `Relay ${n}`,
        at: [8 + n * 8, 8 + (n % 3) * 8] as const,
      })),
    ],
    wires: numbers.map((n) => ({
      id: `w${n}`,
      from: n === 1 ? "bus.1" : `k${n - 1}.87`,
      to: `k${n}.30`,
      size: "14 AWG",
      metres: n,
      colour: "RD",
    })),
  };
}
