import type { PaperOptions } from "../paper.ts";

/** Printers leave at least this much blank; nothing of ours stands in it. */
const SAFE_MARGIN_MM = 10;

/** Millimetres, long side first. ISO 216 for A sizes; Letter 11 by 8.5 in and its half, ANSI/ASME Y14.1. */
const SIZES_MM: Readonly<Record<PaperOptions["size"], readonly [number, number]>> = {
  A5: [210, 148],
  A4: [297, 210],
  Letter: [279.4, 215.9],
  "Half-letter": [215.9, 139.7],
};

/** A sheet of paper and the part of it we may use, in millimetres from its top left corner. */
export interface Sheet {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Width and height in millimetres of the sheet that `options` ask for. */
export function paperSizeMm(options: Pick<PaperOptions, "size" | "landscape">): readonly [number, number] {
  const [long, short] = SIZES_MM[options.size];
  return options.landscape ? [long, short] : [short, long];
}

/** The sheet that `options` ask for. */
export function sheetOf(options: Pick<PaperOptions, "size" | "landscape">): Sheet {
  const [widthMm, heightMm] = paperSizeMm(options);
  return {
    widthMm,
    heightMm,
    left: SAFE_MARGIN_MM,
    top: SAFE_MARGIN_MM,
    right: widthMm - SAFE_MARGIN_MM,
    bottom: heightMm - SAFE_MARGIN_MM,
  };
}
