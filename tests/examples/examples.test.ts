import { describe, expect, test } from "vitest";
import { EXAMPLES } from "../../core/examples/index.ts";
import { readCircuitFile, writeCircuitFile } from "../../core/file/index.ts";
import { boxesOverlap } from "../../core/geometry/index.ts";
import { pictureOf } from "../../core/picture/index.ts";
import { reportOn } from "./found.ts";

const TWIN = "-put-right";

test("every demo has its put-right twin next to it, and a name of its own", () => {
  const names = EXAMPLES.map(({ name }) => name);
  expect(names.filter((_, at) => at % 2 === 1)).toEqual(
    names.filter((_, at) => at % 2 === 0).map((name) => name + TWIN),
  );
  expect(new Set(names).size).toBe(names.length);
  expect(names.length).toBeGreaterThanOrEqual(12);
});

test("the first one opened has one stop and nothing else", () => {
  expect(reportOn(EXAMPLES[0]!).snags.map(({ level }) => level)).toEqual(["stop"]);
});

describe.each(EXAMPLES)("$name", (example) => {
  const { name, title, document } = example;

  test("is written to a file and read back the same, as it is titled", () => {
    expect(readCircuitFile(writeCircuitFile(document))).toEqual({ ok: true, document });
    expect(document.sheet?.title).toBe(title);
  });

  test("settles in every situation, and its currents balance", () => {
    const situations = Object.values(reportOn(example).situations);
    expect(situations.length).toBeGreaterThan(2);
    for (const { settled, residualA } of situations) {
      expect(settled).toBe(true);
      expect(residualA).toBeLessThan(1e-9);
    }
  });

  test("opens with up to 6 snags; put right, nothing but advice is left", () => {
    const { snags } = reportOn(example);
    const serious = snags.filter(({ level }) => level !== "advice");
    expect(serious.length > 0).toBe(!name.endsWith(TWIN));
    expect(snags.length).toBeLessThanOrEqual(6);
  });

  test("says everything: nothing is left unknown, every wire has its label, size, length and colour", () => {
    expect(reportOn(example).snags.filter(({ level }) => level === "cant-check")).toEqual([]);
    for (const { label, size, metres, colour } of document.wires) {
      expect([label, size, metres, colour]).not.toContain(undefined);
    }
  });

  test("is drawn clear: no name on another symbol or name, no two wires crossing", () => {
    const { parts, wires } = pictureOf(document);
    const rooms = parts.flatMap(({ id, room }) => room.map((box) => ({ id, box })));
    const collisions = rooms.flatMap((one, at) =>
      rooms.slice(at + 1).filter((other) => other.id !== one.id && boxesOverlap(one.box, other.box)),
    );
    expect(collisions.map(({ id }) => id)).toEqual([]);
    expect(wires.filter(({ hops }) => hops.length > 0).map(({ id }) => id)).toEqual([]);
  });
});

test.each(EXAMPLES.filter(({ name }) => name.endsWith(TWIN)))("$name is its demo with edits", ({ name, document }) => {
  const demo = EXAMPLES.find((other) => `${other.name}${TWIN}` === name)!.document;
  // Pieces that no edit touched are the very same objects.
  expect(document.parts.filter((part) => demo.parts.includes(part)).length).toBeGreaterThanOrEqual(3);
  expect(document.wires.some((wire) => demo.wires.includes(wire))).toBe(true);
  expect(document.system).toBe(demo.system);
  expect({ ...document.sheet, ...demo.sheet }).toEqual(demo.sheet);
});
