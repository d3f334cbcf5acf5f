import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdits, type Document, type Edit, type Part, type Wire } from "../../core/document/index.ts";
import { boxesOverlap, commonLength, type Point } from "../../core/geometry/index.ts";
import { extentOf, pictureOf } from "../../core/picture/index.ts";

const lamp = (id: string, at: Part["at"], more: Partial<Part> = {}): Part => ({
  id,
  kind: "lamp",
  ...(at && { at }),
  ...more,
});
const wire = (id: string, from: string, to: string, more: Partial<Wire> = {}): Wire => ({ id, from, to, ...more });
const sheet = (parts: readonly Part[], wires: readonly Wire[] = []): Document => ({
  format: "groundstrap",
  version: 1,
  parts,
  wires,
});

describe("the picture of a drawing", () => {
  it("stands a part where the document says, turned, with its terminals", () => {
    const { parts } = pictureOf(sheet([lamp("e1", [10, 5], { turn: 90 })]));
    expect(parts[0]!.terminals).toEqual([
      { address: "e1.+", at: [10, 5], exit: "up" },
      { address: "e1.-", at: [10, 9], exit: "down" },
    ]);
  });

  it("leads each wire from its one terminal to its other", () => {
    const { wires } = pictureOf(sheet([lamp("e1", [0, 0]), lamp("e2", [12, 6])], [wire("w1", "e1.-", "e2.+")]));
    expect(wires[0]!.route[0]).toEqual([4, 0]);
    expect(wires[0]!.route.at(-1)).toEqual([12, 6]);
  });

  it("leaves out a wire whose end is not on the sheet", () => {
    expect(pictureOf(sheet([lamp("e1", [0, 0])], [wire("w1", "e1.-", "gone.1")])).wires).toEqual([]);
  });

  it("puts a dot where several wires meet, and none on a single end", () => {
    const parts = [lamp("e1", [0, 0]), lamp("e2", [12, 0]), lamp("e3", [12, 8])];
    const picture = pictureOf(sheet(parts, [wire("w1", "e1.-", "e2.+"), wire("w2", "e1.-", "e3.+")]));
    expect(picture.joints).toEqual([[4, 0]]);
  });

  it("bows a level wire over an upright one that it crosses", () => {
    const parts = [
      lamp("e1", [0, 10]),
      lamp("e2", [30, 10]),
      lamp("e3", [16, 0], { turn: 90 }),
      lamp("e4", [16, 20], { turn: 90 }),
    ];
    const picture = pictureOf(sheet(parts, [wire("w1", "e1.-", "e2.+"), wire("w2", "e3.-", "e4.+")]));
    expect(picture.wires.map(({ hops }) => hops)).toEqual([[[16, 10]], []]);
  });

  it("lays wires of different terminals side by side, not on each other", () => {
    const strip: Part = { id: "g1", kind: "ground-strip", at: [10, 20], props: { posts: 4 } };
    const parts = [strip, lamp("e1", [20, 0]), lamp("e2", [20, 5])];
    const { wires } = pictureOf(sheet(parts, [wire("w1", "e1.-", "g1.4"), wire("w2", "e2.-", "g1.3")]));
    expect(overlap(wires[0]!.route, wires[1]!.route)).toBe(0);
  });

  it("letters a wire with all that is known of it, clear of symbols and their names", () => {
    const parts = [lamp("e1", [0, 0]), lamp("e2", [24, 0])];
    const particulars = { label: "L1", colour: "RD", size: "1.5 mm2", metres: 0.15 };
    const picture = pictureOf(sheet(parts, [wire("w1", "e1.-", "e2.+", particulars)]));
    const [lettering] = picture.wires[0]!.lettering;
    expect(lettering?.text).toBe("L1 RD 1.5 mm² 0.15 m");
    for (const room of picture.parts.flatMap((part) => part.room)) {
      expect(boxesOverlap(extentOf(lettering!), room)).toBe(false);
    }
  });

  it("letters a short wire with its label alone", () => {
    const particulars = { label: "L1", colour: "RD", size: "1.5 mm2", metres: 0.15 };
    const picture = pictureOf(
      sheet([lamp("e1", [0, 0]), lamp("e2", [7, 0])], [wire("w1", "e1.-", "e2.+", particulars)]),
    );
    expect(picture.wires[0]!.lettering.map(({ text }) => text)).toEqual(["L1"]);
  });

  it("names a part by its id and what the person calls it", () => {
    const texts = (part: Part) => pictureOf(sheet([part])).parts[0]!.lettering.map(({ text }) => text);
    expect(texts(lamp("e1", [0, 0], { label: "Awning left", props: { watts: 27 } }))).toEqual(
      expect.arrayContaining(["E1 Awning left", "27 W"]),
    );
    expect(texts(lamp("e1", [0, 0]))).toContain("E1");
  });

  it("has a box of no size for an empty sheet", () => {
    expect(pictureOf(sheet([])).box).toEqual({ left: 0, top: 0, right: 0, bottom: 0 });
  });
});

describe("the next picture of the same drawing", () => {
  it("is the one worked out from nothing, whatever was edited", () => {
    fc.assert(
      fc.property(drawing, fc.array(edit, { minLength: 1, maxLength: 3 }), (document, edits) => {
        const next = applyEdits(document, edits.flatMap((each) => each(document)).slice(0, 3));
        expect(pictureOf(next, undefined, pictureOf(document))).toEqual(pictureOf(next));
      }),
      { numRuns: 120 },
    );
  });

  it("keeps the very objects of what did not change", () => {
    const parts = Array.from({ length: 20 }, (_, i) => lamp(`e${i}`, [i * 20, 0]));
    const wires = parts.slice(1).map((part, i) => wire(`w${i}`, `e${i}.-`, `${part.id}.+`));
    const document = sheet(parts, wires);
    const before = pictureOf(document);
    const moved = applyEdits(document, [{ op: "set-part", id: "e0", change: { at: [0, -3] } }]);
    const after = pictureOf(moved, undefined, before);
    const changed = after.wires.filter((each) => !before.wires.includes(each)).map(({ id }) => id);
    expect(changed).toEqual(["w0"]);
    expect(after.parts.filter((part) => !before.parts.includes(part)).map(({ id }) => id)).toEqual(["e0"]);
  });

  it("turns a switch without laying its wires anew", () => {
    const parts: Part[] = [{ id: "s1", kind: "switch", at: [0, 0] }, lamp("e1", [12, 0])];
    const document = sheet(parts, [wire("w1", "s1.2", "e1.+")]);
    const before = pictureOf(document);
    const after = pictureOf(document, new Map([["s1", { position: "on" }]]), before);
    expect(after.wires[0]).toBe(before.wires[0]);
    expect(after.parts[0]!.strokes).not.toEqual(before.parts[0]!.strokes);
  });
});

const spot = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 30 }));
const kind = fc.constantFrom("lamp", "fuse", "relay", "splice", "ground-strip");
const TERMINALS: Readonly<Record<string, readonly string[]>> = {
  lamp: ["+", "-"],
  fuse: ["1", "2"],
  relay: ["30", "85", "86", "87"],
  splice: ["s"],
  "ground-strip": ["1", "2", "3"],
};

const drawing: fc.Arbitrary<Document> = fc
  .tuple(
    fc.array(fc.record({ kind, at: spot, turn: fc.constantFrom(0 as const, 90 as const, 180 as const) }), {
      minLength: 2,
      maxLength: 8,
    }),
    fc.array(fc.tuple(fc.nat(), fc.nat(), fc.option(spot, { nil: undefined })), { maxLength: 8 }),
  )
  .map(([stands, runs]) => {
    const parts = stands.map((stand, i): Part => ({
      id: `p${i}`,
      ...stand,
      ...(stand.kind === "ground-strip" && { props: { posts: 3 } }),
    }));
    const addresses = parts.flatMap((part) => TERMINALS[part.kind]!.map((name) => `${part.id}.${name}`));
    const wires = runs.map(([a, b, via], i): Wire => {
      const [from, to] = [addresses[a % addresses.length]!, addresses[b % addresses.length]!];
      return { id: `w${i}`, from, to, ...(via !== undefined && { via: [via] }) };
    });
    return sheet(parts, wires);
  });

const edit: fc.Arbitrary<(document: Document) => Edit[]> = fc
  .tuple(fc.nat(), fc.nat(3), spot)
  .map(([which, what, at]) => (document) => {
    const part = document.parts[which % document.parts.length]!;
    const run = document.wires[which % Math.max(1, document.wires.length)];
    if (what === 0 && run !== undefined) return [{ op: "set-wire", id: run.id, change: { via: [at] } }];
    if (what === 1) return [{ op: "add-part", part: { id: `new${which}-${at.join("-")}`, kind: "lamp", at } }];
    return [{ op: "set-part", id: part.id, change: { at } }];
  });

function overlap(a: readonly Point[], b: readonly Point[]): number {
  let length = 0;
  for (let i = 1; i < a.length; i++) {
    for (let k = 1; k < b.length; k++) length += commonLength(a[i - 1]!, a[i]!, b[k - 1]!, b[k]!);
  }
  return length;
}
