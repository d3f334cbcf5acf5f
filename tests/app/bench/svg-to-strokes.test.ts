import * as fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { svgToStrokes } from "../../../app/bench/svg-to-strokes.ts";
import { BLANK_SYMBOL } from "../../../app/bench/symbol.ts";
import { whyNoFile } from "../../../app/bench/symbol-file.ts";

const svg = (inner: string) => `<svg xmlns="http://www.w3.org/2000/svg">${inner}</svg>`;
const strokesOf = (inner: string) => svgToStrokes(svg(inner)).strokes;
const terminals = [{ name: "1", at: [0, 0], exit: "left" }] as const;
/** Whether a circuit file takes the strokes as they are. */
const refusalOf = (text: string) =>
  whyNoFile({ ...BLANK_SYMBOL, name: "X", terminals, drawing: svgToStrokes(text).strokes });

describe("a pasted SVG", () => {
  test.each([
    ["line", `<line x1="0" y1="0" x2="8" y2="6"/>`, 2, undefined],
    ["polyline", `<polyline points="0,0 4,6 8,0"/>`, 3, undefined],
    ["polygon", `<polygon points="0 0 4 6 8 0"/>`, 3, true],
    ["rect", `<rect width="8" height="6"/>`, 4, true],
    ["path", `<path d="M0 0H8V6H0z"/>`, 4, true],
    ["relative path", `<path d="m0 0 8 0 0 6z"/>`, 3, true],
  ])("gives the corners of a %s", (_name, inner, corners, closed) => {
    const [stroke] = strokesOf(inner);
    expect(stroke).toMatchObject({ shape: "line", ...(closed && { closed }) });
    expect(stroke?.shape === "line" && stroke.points).toHaveLength(corners);
  });

  it("is fitted into eight by six grid steps, whatever its own size", () => {
    expect(strokesOf(`<rect x="900" y="-40" width="800" height="600"/>`)).toEqual([
      {
        shape: "line",
        points: [
          [0, -3],
          [8, -3],
          [8, 3],
          [0, 3],
        ],
        closed: true,
      },
    ]);
  });

  it("keeps circles round, and makes an outline of those pressed flat", () => {
    expect(strokesOf(`<circle cx="5" cy="5" r="3"/>`)).toMatchObject([{ shape: "circle", centre: [4, 0], radius: 3 }]);
    expect(strokesOf(`<ellipse rx="4" ry="2"/>`)).toMatchObject([{ shape: "line", closed: true }]);
    expect(strokesOf(`<g transform="scale(2 1)"><circle r="3"/></g>`)).toMatchObject([{ shape: "line" }]);
  });

  // SVG 2, chapter 8.5: transforms in a list apply from the right, groups from the inside.
  it("puts transforms on one another as the standard says", () => {
    const [turned] = strokesOf(
      `<g transform="translate(10 0) rotate(90)"><line x2="4"/></g><line x1="10" y1="0" x2="13" y2="0"/>`,
    );
    // From (10, 0) to (10, 4) beside a line of 3 to the right: 4 tall in a room of 6 makes 1.5 grid steps of one.
    expect(turned).toMatchObject({
      points: [
        [1.75, -3],
        [1.75, 3],
      ],
    });
  });

  it("flattens curves to within a hundredth of their size", () => {
    const [arc] = strokesOf(`<path d="M -3 0 A 3 3 0 0 1 3 0 A 3 3 0 0 1 -3 0"/>`);
    if (arc?.shape !== "line") throw new Error("wanted a line");
    for (const [x, y] of arc.points) expect(Math.hypot(x - 4, y)).toBeCloseTo(3, 1);
  });

  it("reads arc flags written without a gap", () => {
    expect(strokesOf(`<path d="M0 0a3 3 0 016 0"/>`)).toEqual(strokesOf(`<path d="M0 0a3 3 0 0 1 6 0"/>`));
  });

  it("takes short texts with their place and size", () => {
    expect(
      strokesOf(
        `<rect width="80" height="60"/><text x="40" y="30" font-size="10" text-anchor="middle">30 &amp; 87</text>`,
      )[1],
    ).toMatchObject({
      shape: "text",
      text: "30 & 87",
      size: 1,
      anchor: "middle",
    });
  });

  it("fills what has an inked fill and no inked line", () => {
    expect(strokesOf(`<rect width="2" height="2" fill="#000"/>`)).toMatchObject([{ fill: true }]);
    expect(strokesOf(`<rect width="2" height="2" fill="none" stroke="#000"/>`)[0]).not.toHaveProperty("fill");
  });
});

describe("a hostile SVG", () => {
  test.each([
    ["a script", `<script>alert(1)</script><script><rect width="4" height="4"/></script>`],
    ["foreign content", `<foreignObject><p>hi</p><rect width="4" height="4"/></foreignObject>`],
    ["a picture from elsewhere", `<image href="https://example.org/x.png" width="4" height="4"/>`],
    ["a piece used from elsewhere", `<use href="https://example.org/x.svg#a"/>`],
    ["a style sheet", `<style>@import "https://example.org/x.css"; rect { width: 4px }</style>`],
    ["definitions", `<defs><rect width="4" height="4"/></defs>`],
    ["what is hidden", `<g display="none"><rect width="4" height="4"/></g>`],
    ["nothing at all", ``],
    ["no numbers", `<rect width="NaN" height="1e999"/><circle r="Infinity"/><path d="M NaN 0 L 1 1"/>`],
    ["only noise", `<<<><rect <circle r="3"`],
  ])("draws nothing of %s", (_name, inner) => {
    expect(strokesOf(inner)).toEqual([]);
  });

  it("says what was left out", () => {
    expect(svgToStrokes(svg(`<script/><rect width="3" height="3" onload="alert(1)"/>`)).leftOut).toEqual([
      "scripts and movement",
    ]);
  });

  it("never follows a document's own entities", () => {
    const bomb = `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>${svg(`<text font-size="10">&b;</text>`)}`;
    expect(JSON.stringify(svgToStrokes(bomb).strokes)).not.toContain("aaaa");
  });

  test.each([
    ["a hundred thousand shapes", svg(`<circle r="1"/>`.repeat(100_000))],
    ["a million letters in a path", svg(`<path d="M0 0${"l1 1".repeat(250_000)}"/>`)],
    [
      "a hundred thousand groups in one another",
      svg(`${"<g transform='scale(2)'>".repeat(40_000)}<rect width="1" height="1"/>`),
    ],
    ["an endless tag", `<svg ${"a='b' ".repeat(160_000)}`],
    ["quotes that never close", `<svg a="${"<".repeat(900_000)}`],
    ["transforms without end", svg(`<rect width="1" height="1" transform="${"rotate(1) ".repeat(50_000)}"/>`)],
    ["a comment that never closes", `<svg><!--${"-".repeat(900_000)}`],
  ])("is done in a moment with %s, and its strokes are ones a file takes", (_name, text) => {
    const started = performance.now();
    const { strokes } = svgToStrokes(text);
    // Far above what it takes on a slow machine, far below what anything worse than linear would.
    expect(performance.now() - started).toBeLessThan(5000);
    expect(strokes.length).toBeLessThanOrEqual(400);
    expect(refusalOf(text)).toBeNull();
  });

  it("leaves out lettering of no size or less", () => {
    expect(refusalOf(svg('<text x="0" font-size="-5e-324">!</text>'))).toBeNull();
    expect(refusalOf(svg('<text font-size="-12">!</text><circle r="-3"/>'))).toBeNull();
  });

  it("gives strokes a file takes, whatever the shapes say", () => {
    const number = fc.oneof(fc.integer({ min: -50, max: 50 }), fc.double(), fc.constantFrom("1e7", "-0", ".5.5", "x"));
    const shape = fc.oneof(
      fc.tuple(number, number).map(([r, x]) => `<circle r="${r}" cx="${x}"/>`),
      fc.tuple(number, number).map(([rx, ry]) => `<ellipse rx="${rx}" ry="${ry}" fill="#000"/>`),
      fc
        .tuple(number, number, fc.string())
        .map(([x, size, text]) => `<text x="${x}" font-size="${size}">${text}</text>`),
      fc
        .array(fc.oneof(number, fc.constantFrom(..."MmLlHhVvCcSsQqTtAaZz")), { maxLength: 30 })
        .map((d) => `<path d="${d.join(" ")}"/>`),
      fc
        .array(number, { maxLength: 6 })
        .map((six) => `<g transform="matrix(${six.join(",")})"><rect width="3" height="2"/></g>`),
    );
    const picture = fc.array(shape, { maxLength: 8 }).map((shapes) => svg(shapes.join("")));
    fc.assert(
      fc.property(fc.oneof(picture, fc.string({ maxLength: 300 })), (text) => {
        expect(refusalOf(text)).toBeNull();
      }),
    );
  });
});
