import { inkLine, inkText, RULE_MM } from "./ink.ts";
import { LINE_PITCH, SMALLEST_MM, wrapText } from "./lettering.ts";

/** A piece as wide as the page that no page break may part. `draw` sets it with its top left corner at x, y. */
export interface Strip {
  readonly heightMm: number;
  readonly keepWithNext?: boolean;
  draw(x: number, y: number): readonly string[];
}

/** Strips that follow each other; `head` stands before the first and again at the top of every page they run on to. */
export interface Block {
  readonly strips: readonly Strip[];
  readonly head?: Strip;
}

export const HEADING_MM = 4.2;
const LINE_MM = SMALLEST_MM * LINE_PITCH;

/** A heading with a rule under it; never left alone at the foot of a page. */
export function headingBlock(text: string, widthMm: number): Block {
  const lines = wrapText(text, HEADING_MM, widthMm, 2);
  const lineMm = HEADING_MM * 1.25;
  const heightMm = 3.2 + lines.length * lineMm + 0.8;
  const strip: Strip = {
    heightMm,
    keepWithNext: true,
    draw: (x, y) => [
      ...lines.map((line, at) => inkText(x, y + 3.2 + (at + 0.5) * lineMm, line, { size: HEADING_MM })),
      inkLine(
        [
          [x, y + heightMm - 0.35],
          [x + widthMm, y + heightMm - 0.35],
        ],
        { widthMm: RULE_MM.thick },
      ),
    ],
  };
  return { strips: [strip] };
}

/** Running text, one strip per line so that it may break across pages. */
export function paragraphBlock(text: string, widthMm: number, mostLines = 60): Block {
  const lines = wrapText(text, SMALLEST_MM, widthMm, mostLines);
  return {
    strips: lines.map((line, at) => {
      const before = at === 0 ? 1 : 0;
      return { heightMm: LINE_MM + before, draw: (x, y) => [inkText(x, y + before + LINE_MM / 2, line)] };
    }),
  };
}

/** One point per line or lines, each behind a square dot. */
export function pointsBlock(texts: readonly string[], widthMm: number): Block {
  return {
    strips: texts.map((text) => {
      const lines = wrapText(text, SMALLEST_MM, widthMm - 4, 6);
      return {
        heightMm: lines.length * LINE_MM + 0.6,
        draw: (x, y) => [
          inkLine(
            [
              [x + 0.6, y + 0.3 + LINE_MM / 2],
              [x + 1.8, y + 0.3 + LINE_MM / 2],
            ],
            { widthMm: 1.2 },
          ),
          ...lines.map((line, at) => inkText(x + 4, y + 0.3 + (at + 0.5) * LINE_MM, line)),
        ],
      };
    }),
  };
}

/** Blank paper. */
export function gapBlock(heightMm: number): Block {
  return { strips: [{ heightMm, draw: () => [] }] };
}
