import type { Document } from "../document/index.ts";
import { flow, frameInk, frameInside, inkSheet, sheetOf, type Block, type Sheet } from "./layout/index.ts";
import type { PaperOptions } from "./paper.ts";

/** The pages of a paper made of blocks, framed with its title. `blocks` is told the width it has, in millimetres. */
export function printed(
  title: string,
  document: Document,
  options: PaperOptions,
  blocks: (widthMm: number) => readonly Block[],
): string[] {
  const sheet = sheetOf(options);
  const inside = frameInside(sheet);
  return framed(title, document, sheet, flow(blocks(inside.right - inside.left), inside));
}

/** Each page's ink as an SVG file of true size, with the title of the paper and of the circuit round it. */
export function framed(
  title: string,
  document: Document,
  sheet: Sheet,
  contents: readonly (readonly string[])[],
  metadata = "",
): string[] {
  const words = document.sheet ?? {};
  return contents.map((ink, at) => {
    const frame = frameInk(sheet, { paper: title, words, page: at + 1, pages: contents.length });
    return inkSheet(sheet, `${title}: ${words.title ?? "untitled"}`, [...frame, ...ink], metadata);
  });
}
