import { describe, expect, it } from "vitest";
import type { Part } from "../../core/document/index.ts";
import { boxOfStroke } from "../../core/geometry/index.ts";
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

describe.each(partKinds.map((kind) => [kind.kind, kind] as const))("%s", (name, kind) => {
  const parts: Part[] = variants(kind).map((props, at) => ({ id: `p${at}`, kind: name, props }));

  it("says its words in lower case and itself in full", () => {
    for (const word of kind.words) expect(word).toBe(word.toLowerCase());
    expect(kind.about).toMatch(/\.$/);
    expect(kind.letter).toMatch(/^[a-z]$/);
  });

  it("has fallbacks that pass its own schema, and refuses a number beyond its range", () => {
    for (const [key, setting] of Object.entries(kind.settings)) {
      if (setting.fallback !== undefined) expect(setting.schema.safeParse(setting.fallback).success, key).toBe(true);
      expect(setting.help, key).toMatch(/\.$/);
      if (setting.min === undefined || setting.max === undefined) continue;
      expect(setting.schema.safeParse(setting.min).success, key).toBe(true);
      expect(setting.schema.safeParse(setting.max).success, key).toBe(true);
      for (const bad of [setting.min - 0.001, setting.max + 1, Infinity, NaN, "1"]) {
        expect(setting.schema.safeParse(bad).success, `${key} ${bad}`).toBe(false);
      }
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
      for (const {
        at: [x, y],
        name: terminal,
      } of terminals) {
        expect(Number.isInteger(x) && Number.isInteger(y), terminal).toBe(true);
        expect(x >= bounds.left && x <= bounds.right && y >= bounds.top && y <= bounds.bottom, terminal).toBe(true);
      }
    }
  });

  it("draws every pose inside its bounds, with no number missing", () => {
    for (const part of parts) {
      const settings = settingsOf(part);
      const bounds = kind.bounds(settings);
      for (const pose of poses(kind.control?.(settings)?.positions ?? [])) {
        const strokes = kind.symbol(settings, pose);
        expect(strokes.length).toBeGreaterThan(0);
        for (const stroke of strokes) {
          const extent = boxOfStroke(stroke);
          const inside =
            extent.left >= bounds.left - 1e-9 &&
            extent.right <= bounds.right + 1e-9 &&
            extent.top >= bounds.top - 1e-9 &&
            extent.bottom <= bounds.bottom + 1e-9;
          expect(inside, `${JSON.stringify(stroke)} in ${JSON.stringify(bounds)}`).toBe(true);
        }
      }
    }
  });

  it("is made of elements between its own terminals, nodes inside it and the chassis", () => {
    for (const part of parts) {
      const names = new Set(terminalsOf(part).map((terminal) => terminal.name));
      for (const nominalV of [12, 24] as const) {
        for (const element of modelOf(part, { nominalV, seriesUpper: false })) {
          for (const end of endsOf(element))
            expect(names.has(end) || end === CHASSIS || /^\$\w+$/.test(end), end).toBe(true);
          for (const value of Object.values(element)) expect(value).not.toBeNaN();
        }
      }
    }
  });

  it("rests in the position off and moves contacts only to positions it has", () => {
    for (const part of parts) {
      const positions = kind.control?.(settingsOf(part))?.positions ?? [];
      if (positions.length > 0) expect(positions[0]).toBe("off");
      for (const element of modelOf(part, { nominalV: 12, seriesUpper: false })) {
        if (element.type === "source") for (const position of element.when ?? []) expect(positions).toContain(position);
        if (element.type !== "contact" || !("positions" in element.movedBy)) continue;
        for (const position of element.movedBy.positions) expect(positions).toContain(position);
      }
    }
  });

  it("starts from the Shelf with settings of its own that pass", () => {
    for (const nominalV of [12, 24] as const) {
      for (const [key, value] of Object.entries(kind.fresh?.(nominalV) ?? {})) {
        expect(kind.settings[key]?.schema.safeParse(value).success, key).toBe(true);
      }
    }
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
