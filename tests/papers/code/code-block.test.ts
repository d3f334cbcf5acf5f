import {
  BinaryBitmap,
  DecodeHintType,
  GlobalHistogramBinarizer,
  QRCodeReader,
  RGBLuminanceSource,
} from "@zxing/library";
import { describe, expect, test } from "vitest";
import type { Document } from "../../../core/document/index.ts";
import { EXAMPLES } from "../../../core/examples/index.ts";
import { codeBlocks } from "../../../core/papers/code/code-block.ts";
import { circuitPayload, paperOf } from "../../../core/papers/index.ts";
import { a5, sourceOf } from "../support/source.ts";
import { everyElement, parseXml } from "../support/xml.ts";

const card = paperOf("drawing")!;
const PIXELS_PER_MM = 20;

/** What a phone reads off a page: the code's runs painted as pixels, read by a reader that did not write it. */
function scanned(pages: readonly string[]): { readonly text: string; readonly moduleMm: number } | null {
  const path = pages
    .flatMap((page) => everyElement(parseXml(page)))
    .map(({ attributes }) => attributes["d"] ?? "")
    .find((d) => /^M[\d.]+ [\d.]+h[\d.]+v[\d.]+h-[\d.]+zM/.test(d));
  if (path === undefined) return null;
  const boxes = [...path.matchAll(/M([\d.]+) ([\d.]+)h([\d.]+)v([\d.]+)/g)].map((match) => match.slice(1).map(Number));
  const edge = 3;
  const left = Math.min(...boxes.map(([x]) => x!)) - edge;
  const top = Math.min(...boxes.map(([, y]) => y!)) - edge;
  const right = Math.max(...boxes.map(([x, , width]) => x! + width!)) + edge;
  const size = Math.round((right - left) * PIXELS_PER_MM);
  const pixels = new Uint8ClampedArray(size * size).fill(255);
  const at = (mm: number) => Math.round(mm * PIXELS_PER_MM);
  for (const [x, y, width, height] of boxes) {
    for (let row = at(y! - top); row < at(y! + height! - top); row++)
      for (let column = at(x! - left); column < at(x! + width! - left); column++) pixels[row * size + column] = 0;
  }
  const picture = new BinaryBitmap(new GlobalHistogramBinarizer(new RGBLuminanceSource(pixels, size, size)));
  return {
    text: new QRCodeReader().decode(picture, new Map([[DecodeHintType.PURE_BARCODE, true]])).getText(),
    moduleMm: boxes[0]![3]!,
  };
}

describe("the code on the card", () => {
  test.each(EXAMPLES)(
    "of the demo $name is read by an independent reader, at half a millimetre a module or more",
    ({ document }) => {
      const code = scanned(card.pages(sourceOf(document), a5))!;
      expect(code.text).toBe(circuitPayload(document));
      expect(code.moduleMm).toBeGreaterThanOrEqual(0.5);
    },
  );

  test("is left out where the drawing is too big for one, with what to use instead", () => {
    const parts = Array.from({ length: 120 }, (_, at) => ({
      id: `s${at}`,
      kind: "splice",
      label: `${(at * 7919) % 104729} ${(at * at * 31) % 99991}`,
    }));
    const big: Document = { format: "groundstrap", version: 1, parts, wires: [] };
    const ink = codeBlocks(big, 190).flatMap(({ strips }) => strips.flatMap(({ draw }) => draw(0, 0)));
    expect(ink.join()).toMatch(/too big for a code/);
    expect(ink.join()).not.toMatch(/<path d="[^"]*h/);
  });
});
