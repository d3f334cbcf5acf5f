import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { PALETTE_KEYS, type Palette, readPalette } from "../../../app/board/palette.ts";

const css = readFileSync(new URL("../../../app/board/board.css", import.meta.url), "utf8");

describe.each([
  ["light", ":root {"],
  ["dark", ':root[data-theme="dark"] {'],
  ["sunlight", ':root[data-theme="sunlight"] {'],
])("the %s palette", (_theme, selector) => {
  const palette = paletteUnder(selector);

  it("has every ink", () => {
    for (const key of PALETTE_KEYS) expect(palette[key]).toMatch(/^#[0-9a-f]{6}$/);
  });

  // Source: W3C, Web Content Accessibility Guidelines 2.2, success criterion 1.4.3 (4.5 to 1 for text).
  it("stands letters and marks off the paper by 4.5 to 1", () => {
    for (const key of ["ink", "faint", "hot", "rest", "ground", "stop", "fix", "select", "preview"] as const) {
      expect(contrast(palette[key], palette.paper)).toBeGreaterThanOrEqual(4.5);
    }
  });
});

it("the sunlight palette stands off by more than the light one", () => {
  const [light, sunlight] = [paletteUnder(":root {"), paletteUnder(':root[data-theme="sunlight"] {')];
  for (const key of ["ink", "faint", "hot", "rest", "ground"] as const) {
    expect(contrast(sunlight[key], sunlight.paper)).toBeGreaterThan(contrast(light[key], light.paper));
  }
});

function paletteUnder(selector: string): Palette {
  const block = css.slice(css.indexOf(selector)).split("}")[0]!;
  return readPalette({ getPropertyValue: (name) => new RegExp(`${name}: ([^;]+);`).exec(block)?.[1] ?? "" });
}

/** Contrast ratio of two #rrggbb colours. Source: WCAG 2.2, definitions of contrast ratio and relative luminance. */
function contrast(a: string, b: string): number {
  const [high, low] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (high! + 0.05) / (low! + 0.05);
}

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}
