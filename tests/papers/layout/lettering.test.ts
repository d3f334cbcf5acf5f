import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cleanText, fitText, SMALLEST_MM, textWidthMm, unbroken, wrapText } from "../../../core/papers/layout/index.ts";

describe("cleaning", () => {
  test("control, direction-override and half characters are gone, line breaks are spaces", () => {
    expect(cleanText(" a\r\n\tb\u0000\u202ec\ud800 ")).toBe("a b c\ufffd");
  });

  test("a space that must not break stays", () => {
    expect(cleanText(unbroken("14 AWG"))).toBe("14\u00a0AWG");
  });
});

describe("fitting", () => {
  test("the smallest lettering is 9 pt", () => {
    // 1 pt = 1/72 in, 1 in = 25.4 mm.
    expect(SMALLEST_MM).toBeGreaterThanOrEqual((9 / 72) * 25.4);
  });

  test("what is cut ends in an ellipsis and fits", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", maxLength: 200 }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (text, width) => {
          const cut = fitText(text, SMALLEST_MM, width);
          expect(textWidthMm(cut, SMALLEST_MM)).toBeLessThanOrEqual(width + 1e-9);
          expect(cut === cleanText(text) || cut === "" || cut.endsWith("…")).toBe(true);
        },
      ),
    );
  });
});

describe("wrapping", () => {
  test("breaks between words, and keeps number and unit together", () => {
    const width = textWidthMm("2.5 mm² x", SMALLEST_MM);
    expect(wrapText(`wire ${unbroken("2.5 mm²")}`, SMALLEST_MM, width)).toEqual(["wire", unbroken("2.5 mm²")]);
  });

  test("every line fits, and nothing is lost while there are lines left", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", maxLength: 200 }),
        fc.double({ min: 8, max: 60, noNaN: true }),
        (text, width) => {
          const lines = wrapText(text, SMALLEST_MM, width, 500);
          for (const line of lines) expect(textWidthMm(line, SMALLEST_MM)).toBeLessThanOrEqual(width + 1e-9);
          expect(lines.join("").replaceAll(" ", "")).toBe(cleanText(text).replaceAll(" ", ""));
        },
      ),
    );
  });

  test("past the last line it is cut", () => {
    expect(wrapText("one two three four", SMALLEST_MM, textWidthMm("three", SMALLEST_MM), 2)).toEqual(["one", "tw…"]);
  });
});
