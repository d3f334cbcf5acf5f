import { describe, expect, it } from "vitest";
import { applyEdits, type Document, type Part } from "../../core/document/index.ts";
import { boxesOverlap, standBox, type Box } from "../../core/geometry/index.ts";
import { kindOf, settingsOf } from "../../core/parts/index.ts";
import { freeSpot, placeMissing, tidyUp } from "../../core/placing/index.ts";
import { circuit } from "../support/circuit.ts";

const job = () =>
  unplaced(
    circuit([
      "bat:battery > f1:fuse 10A > k1:relay.30/87 > la1:lamp 27W > g1:strip.1",
      "ff1:feed > s1:switch > k1.86",
      "k1.85 > g1.2",
      "g1.3 > bat.-",
    ]),
  );

function withoutPlace(part: Part): Part {
  const loose: { -readonly [K in keyof Part]: Part[K] } = { ...part };
  delete loose.at;
  return loose;
}

function unplaced(document: Document): Document {
  return { ...document, parts: document.parts.map(withoutPlace) };
}

function symbolBox(part: Part): Box {
  return standBox(kindOf(part.kind)!.bounds(settingsOf(part)), {
    at: part.at!,
    turn: part.turn ?? 0,
    flip: part.flip ?? false,
  });
}

function overlaps(document: Document): string[] {
  const boxes = document.parts.map((part) => [part.id, symbolBox(part)] as const);
  return boxes.flatMap(([id, box], at) =>
    boxes.slice(at + 1).flatMap(([other, otherBox]) => (boxesOverlap(box, otherBox) ? [`${id} ${other}`] : [])),
  );
}

function xOf(document: Document, id: string): number {
  return document.parts.find((part) => part.id === id)!.at![0];
}

function fleet(count: number): Document {
  const chains = Array.from({ length: count }, (_, n) => [
    `bb:bus.1/${n + 2} > f${n}:fuse 10A > k${n}:relay.30/87 > la${n}:lamp 5W > gs.${n + 2}`,
    `ff${n}:feed > s${n}:switch > k${n}.86`,
    `k${n}.85 > gs.${n + 2}`,
  ]).flat();
  const first = ["bat:battery > f:fuse 60A > bb:bus.1/2 posts=64", "gs:strip.1 posts=64 > bat.-"];
  return unplaced(circuit([...first, ...chains.map((chain) => chain.replace("bb:bus.1/", "bb."))]));
}

describe("placing the parts of a file written by hand", () => {
  it("gives every part whole grid steps on the sheet and leaves none on top of another", () => {
    const placed = placeMissing(job());
    for (const { at } of placed.parts) {
      expect(at!.every((value) => Number.isInteger(value) && value >= 0)).toBe(true);
    }
    expect(overlaps(placed)).toEqual([]);
  });

  it("lets power flow from the battery on the left to the lamp on the right", () => {
    const placed = placeMissing(job());
    const xs = ["bat", "f1", "k1", "la1"].map((id) => xOf(placed, id));
    expect(xs).toEqual(xs.toSorted((a, b) => a - b));
    expect(new Set(xs).size).toBe(4);
  });

  it("puts the trigger of a relay left of it, one column each", () => {
    const placed = placeMissing(job());
    expect(xOf(placed, "ff1")).toBeLessThan(xOf(placed, "s1"));
    expect(xOf(placed, "s1")).toBeLessThan(xOf(placed, "k1"));
  });

  it("puts the ground strip below everything", () => {
    const placed = placeMissing(job());
    const strip = placed.parts.find(({ id }) => id === "g1")!;
    const others = placed.parts.filter((part) => part !== strip);
    expect(Math.max(...others.map((part) => symbolBox(part).bottom))).toBeLessThan(symbolBox(strip).top);
  });

  it("levels a fuse with the relay contact it feeds", () => {
    const placed = placeMissing(job());
    const [fuse, relay] = ["f1", "k1"].map((id) => placed.parts.find((part) => part.id === id)!.at!);
    expect(fuse![1]).toBe(relay![1] + 1);
  });

  it("sets a chassis point beside the lamp it serves", () => {
    const placed = placeMissing(unplaced(circuit("bat:battery > f1:fuse 5A > la1:lamp 5W > g:ground")));
    const [lamp, ground] = ["la1", "g"].map((id) => placed.parts.find((part) => part.id === id)!.at!);
    expect([ground![0] - lamp![0], ground![1] - lamp![1]]).toEqual([6, 1]);
  });

  it("always gives the same document the same places, whatever was placed before", () => {
    expect(placeMissing(fleet(6))).toEqual(placeMissing(fleet(6)));
  });

  it("leaves a document in which every part has a place as it is", () => {
    const placed = placeMissing(job());
    expect(placeMissing(placed)).toBe(placed);
  });

  it("keeps places that are given and fits the rest beside what they are wired to", () => {
    const placed = placeMissing(job());
    const parts = placed.parts.map((part): Part => (part.id === "la1" ? { ...part, at: [60, 30] } : part));
    const again = placeMissing({
      ...placed,
      parts: parts.map((part) => (part.id === "f1" ? withoutPlace(part) : part)),
    });
    expect(again.parts.find(({ id }) => id === "la1")!.at).toEqual([60, 30]);
    expect(overlaps(again)).toEqual([]);
    const [fuse, relay] = ["f1", "k1"].map((id) => again.parts.find((part) => part.id === id)!.at!);
    expect(Math.hypot(fuse![0] - relay![0], fuse![1] - relay![1])).toBeLessThan(20);
  });

  it("copes with loops, dangling wires, parts with no wire and parts wired to themselves", () => {
    const document = circuit(["a:switch > b:switch > a.1", "c:battery > c.-", "d:load", "e:splice > b.1"]);
    const odd = unplaced({ ...document, wires: [...document.wires, { id: "wx", from: "a.nowhere", to: "b.1" }] });
    expect(overlaps(placeMissing(odd))).toEqual([]);
  });

  it("keeps 300 parts apart on a sheet no wider than it must be", () => {
    const document = fleet(59);
    expect(document.parts.length).toBeGreaterThan(295);
    const placed = placeMissing(document);
    expect(overlaps(placed)).toEqual([]);
    expect(Math.max(...placed.parts.map(({ at }) => at![0]))).toBeLessThan(400);
  });

  it("keeps even a chain of thousands within the sheet a file may use", () => {
    const parts = Array.from({ length: 4000 }, (_, n): Part => ({ id: `f${n}`, kind: "fuse" }));
    const wires = parts.slice(1).map((_, n) => ({ id: `w${n}`, from: `f${n}.2`, to: `f${n + 1}.1` }));
    const placed = placeMissing({ format: "groundstrap", version: 1, parts, wires });
    for (const { at } of placed.parts) expect(Math.max(...at!)).toBeLessThan(10_000);
  });
});

describe("tidying up", () => {
  it("lays everything out afresh, upright, with straight wires", () => {
    const messy = job();
    const document: Document = {
      ...messy,
      parts: messy.parts.map((part): Part => ({ ...part, at: [3, 3], turn: 90, flip: true })),
      wires: messy.wires.map((wire) => ({ ...wire, via: [[1, 1]] })),
    };
    const tidy = applyEdits(document, tidyUp(document));
    expect(overlaps(tidy)).toEqual([]);
    expect(tidy.parts.every(({ turn, flip }) => turn === 0 && flip === false)).toBe(true);
    expect(tidy.wires.every((wire) => !("via" in wire))).toBe(true);
    expect(tidy.parts.map(({ at }) => at)).toEqual(placeMissing(messy).parts.map(({ at }) => at));
  });
});

describe("a spot to drop a part on", () => {
  const relayBox = kindOf("relay")!.bounds(settingsOf({ id: "k", kind: "relay" }));

  it("is where the person points, while nothing stands there", () => {
    expect(freeSpot(circuit("bat:battery"), relayBox, [200, 7])).toEqual([200, 7]);
  });

  it("is beside what stands there, and not far", () => {
    const document = placeMissing(job());
    const at = freeSpot(document, relayBox, xySomewhere(document));
    const dropped: Part = { id: "k9", kind: "relay", at };
    expect(overlaps({ ...document, parts: [...document.parts, dropped] })).toEqual([]);
    expect(Math.hypot(at[0] - xySomewhere(document)[0], at[1] - xySomewhere(document)[1])).toBeLessThan(25);
  });
});

function xySomewhere(document: Document): readonly [number, number] {
  return document.parts.find(({ id }) => id === "k1")!.at!;
}
