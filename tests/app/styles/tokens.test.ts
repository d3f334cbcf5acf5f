import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const css = readFileSync(new URL("../../../app/styles/tokens.css", import.meta.url), "utf8");

/** The colours of one theme: those of the light one, as far as the theme does not say others. */
function coloursOf(theme: "light" | "dark" | "sunlight"): ReadonlyMap<string, string> {
  const blocks = [...css.matchAll(/:root(?:\[data-theme="(\w+)"\])? \{([^}]*)\}/g)];
  const colours = new Map<string, string>();
  for (const [, name = "light", body = ""] of blocks) {
    if (name !== "light" && name !== theme) continue;
    for (const [, key, value] of body.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)) colours.set(key!, value!);
  }
  return colours;
}

/** WCAG 2.2, "relative luminance" and "contrast ratio". */
function contrast(a: string, b: string): number {
  const luminance = (hex: string) => {
    const [red, green, blue] = [1, 3, 5].map((at) => {
      const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
  };
  const [light, dark] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

const GROUNDS = ["paper", "sheet", "raised"];
const INKS = ["ink", "ink-soft", "copper", "stop", "fix", "advice", "cant-check"];
const PAIRS: readonly (readonly [string, string])[] = [
  ...INKS.flatMap((ink) => GROUNDS.map((ground) => [ink, ground] as const)),
  ["ink", "copper-wash"],
  ["copper", "copper-wash"],
  ["ink", "stop-wash"],
  ["on-copper", "copper"],
  ["paper", "ink"],
];

test("the device's bars have the page's colour before the app runs", () => {
  const page = readFileSync(new URL("../../../app/index.html", import.meta.url), "utf8");
  for (const theme of ["light", "dark"] as const) {
    const [, said] = new RegExp(
      `name="theme-color" content="(#\\w+)" media="\\(prefers-color-scheme: ${theme}\\)"`,
    ).exec(page)!;
    expect(said).toBe(coloursOf(theme).get("paper"));
  }
});

describe.each(["light", "dark", "sunlight"] as const)("the %s theme", (theme) => {
  const colours = coloursOf(theme);

  // WCAG 2.2, success criterion 1.4.3; the sunlight theme holds to 1.4.6.
  test.each(PAIRS)("%s reads on %s", (ink, ground) => {
    expect(contrast(colours.get(ink)!, colours.get(ground)!)).toBeGreaterThanOrEqual(theme === "sunlight" ? 7 : 4.5);
  });

  // WCAG 2.2, success criterion 1.4.11.
  test.each(["line-strong", "focus", "copper-wire"])("%s stands off what it lies on", (line) => {
    for (const ground of GROUNDS) expect(contrast(colours.get(line)!, colours.get(ground)!)).toBeGreaterThanOrEqual(3);
  });
});
