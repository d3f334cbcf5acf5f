import { describe, expect, it } from "vitest";
import type { Part } from "../../core/document/index.ts";
import { boxHolds, boxOfStroke, type Box } from "../../core/geometry/index.ts";
import {
  CHASSIS,
  modelOf,
  partKinds,
  settingsOf,
  terminalsOf,
  type Element,
  type Pose,
} from "../../core/parts/index.ts";
import { variants } from "./variants.ts";

const poses = (positions: readonly string[]): Pose[] => [
  {},
  { pulledIn: true, on: true },
  ...positions.map((position) => ({ position })),
];

function endsOf(element: Element): readonly string[] {
  switch (element.type) {
    case "bar":
      return element.terminals;
    case "source":
      return [element.plus, element.minus];
    case "diode":
      return [element.a, element.k];
    case "converter":
      return [element.inPlus, element.inMinus, element.outPlus, element.outMinus];
    default:
      return [element.a, element.b];
  }
}

/** False too where a number is missing. */
function holds(outer: Box, inner: Box): boolean {
  const slack = 1e-9;
  const across = inner.left >= outer.left - slack && inner.right <= outer.right + slack;
  return across && inner.top >= outer.top - slack && inner.bottom <= outer.bottom + slack;
}

describe.each(partKinds.map((kind) => [kind.kind, kind] as const))("%s", (name, kind) => {
  const parts: Part[] = variants(kind).map((props, at) => ({ id: `p${at}`, kind: name, props }));

  it("says its words in lower case and itself in full", () => {
    for (const word of kind.words) expect(word).toBe(word.toLowerCase());
    expect(kind.about).toMatch(/\.$/);
    expect(kind.letter).toMatch(/^[a-z]$/);
  });

  it("has fallbacks that pass its own schema, and help in whole sentences", () => {
    const settings = Object.entries(kind.settings);
    const failing = settings.filter(
      ([, { fallback, schema }]) => fallback !== undefined && !schema.safeParse(fallback).success,
    );
    expect(failing).toEqual([]);
    expect(settings.filter(([, { help }]) => !help.endsWith("."))).toEqual([]);
  });

  it("takes every number from its least to its most, and none beyond", () => {
    const numbers = Object.values(kind.settings).flatMap(({ min, max, schema }) =>
      min === undefined || max === undefined ? [] : [{ min, max, schema }],
    );
    for (const { min, max, schema } of numbers) {
      expect([min, max].map((good) => schema.safeParse(good).success)).toEqual([true, true]);
      const bad = [min - 0.001, max + 1, Infinity, NaN, "1"];
      expect(bad.filter((value) => schema.safeParse(value).success)).toEqual([]);
    }
  });

  it("keeps what the file says through its settings", () => {
    for (const part of parts) {
      const settings = settingsOf(part);
      const again = settingsOf({ ...part, props: settings });
      expect(again).toEqual(settings);
      expect(settingsOf(part)).toBe(settings);
    }
  });

  it("has each terminal once, on the grid and inside its bounds", () => {
    for (const part of parts) {
      const terminals = terminalsOf(part);
      const bounds = kind.bounds(settingsOf(part));
      expect(new Set(terminals.map((terminal) => terminal.name)).size).toBe(terminals.length);
      expect(new Set(terminals.map((terminal) => terminal.at.join())).size).toBe(terminals.length);
      expect(terminals.filter(({ at }) => !at.every(Number.isInteger) || !boxHolds(bounds, at))).toEqual([]);
    }
  });

  it("draws every pose inside its bounds, with no number missing", () => {
    for (const part of parts) {
      const settings = settingsOf(part);
      const bounds = kind.bounds(settings);
      for (const pose of poses(kind.control?.(settings)?.positions ?? [])) {
        const strokes = kind.symbol(settings, pose);
        expect(strokes.length).toBeGreaterThan(0);
        expect(strokes.filter((stroke) => !holds(bounds, boxOfStroke(stroke)))).toEqual([]);
      }
    }
  });

  it("is made of elements between its own terminals, nodes inside it and the chassis", () => {
    for (const part of parts) {
      const names = new Set(terminalsOf(part).map((terminal) => terminal.name));
      for (const nominalV of [12, 24] as const) {
        const elements = modelOf(part, { nominalV, seriesUpper: false });
        const strange = elements
          .flatMap(endsOf)
          .filter((end) => !names.has(end) && end !== CHASSIS && !/^\$\w+$/.test(end));
        expect(strange).toEqual([]);
        expect(elements.flatMap((element) => Object.values(element)).filter(Number.isNaN)).toEqual([]);
      }
    }
  });

  it("rests in the position off and moves contacts only to positions it has", () => {
    for (const part of parts) {
      const positions = kind.control?.(settingsOf(part))?.positions ?? ["off"];
      expect(positions[0]).toBe("off");
      const used = modelOf(part, { nominalV: 12, seriesUpper: false }).flatMap((element) => {
        if (element.type === "source") return element.when ?? [];
        return element.type === "contact" && "positions" in element.movedBy ? element.movedBy.positions : [];
      });
      expect(used.filter((position) => !positions.includes(position))).toEqual([]);
    }
  });

  it("starts from the Shelf with settings of its own that pass", () => {
    const fresh = ([12, 24] as const).flatMap((nominalV) => Object.entries(kind.fresh?.(nominalV) ?? {}));
    expect(fresh.filter(([key, value]) => !kind.settings[key]?.schema.safeParse(value).success)).toEqual([]);
  });
});

describe("the registry", () => {
  it("has every kind of the circuit file once", () => {
    const kinds = partKinds.map((kind) => kind.kind).sort();
    expect(kinds).toEqual([
      "battery",
      "breaker",
      "bus-bar",
      "changeover-switch",
      "chassis",
      "converter",
      "custom",
      "diode",
      "factory-feed",
      "fuse",
      "fuse-block",
      "ground-strip",
      "key-switch",
      "lamp",
      "load",
      "motor",
      "plug",
      "relay",
      "resistor",
      "splice",
      "switch",
    ]);
  });
});
