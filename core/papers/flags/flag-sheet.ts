import type { Box } from "../../geometry/index.ts";
import { fitText, inkBox, inkLine, inkText, LINE_PITCH, RULE_MM, SMALLEST_MM, wrapText } from "../layout/index.ts";

/** A label that wraps round a wire: both halves say the same and are stuck back to back. */
export interface Flag {
  readonly lines: readonly string[];
}

/** One half, the part that goes round the wire, and the height. Good for wires up to 6 mm across: half of its round is 9.4 mm. */
const HALF_MM = 40;
const WRAP_MM = 10;
const HEIGHT_MM = 15;
const GAP_MM = 3;
const NOTE = "Cut along the lines, put the dashed strip round the wire, stick the halves together.";
const PITCH_MM = SMALLEST_MM * LINE_PITCH;

/** Flags in rows on as many pages as they need: the ink of each page. */
export function flagSheet(flags: readonly Flag[], box: Box): string[][] {
  const width = 2 * HALF_MM + WRAP_MM;
  const note = wrapText(NOTE, SMALLEST_MM, box.right - box.left);
  const top = box.top + note.length * PITCH_MM + 2.5;
  const across = Math.max(1, Math.floor((box.right - box.left + GAP_MM) / (width + GAP_MM)));
  const down = Math.max(1, Math.floor((box.bottom - top + GAP_MM) / (HEIGHT_MM + GAP_MM)));
  const pages: string[][] = [];
  for (let first = 0; first === 0 || first < flags.length; first += across * down) {
    const onPage = flags.slice(first, first + across * down);
    pages.push([
      ...note.map((line, at) => inkText(box.left, box.top + (at + 0.5) * PITCH_MM, line)),
      ...onPage.flatMap((flag, at) => {
        const x = box.left + (at % across) * (width + GAP_MM);
        const y = top + Math.floor(at / across) * (HEIGHT_MM + GAP_MM);
        return flagInk(flag, x, y);
      }),
    ]);
  }
  return pages;
}

function flagInk(flag: Flag, x: number, y: number): string[] {
  const folds = [x + HALF_MM, x + HALF_MM + WRAP_MM];
  return [
    inkBox(x, y, 2 * HALF_MM + WRAP_MM, HEIGHT_MM, { widthMm: RULE_MM.thin }),
    ...folds.map((fold) =>
      inkLine(
        [
          [fold, y],
          [fold, y + HEIGHT_MM],
        ],
        { widthMm: RULE_MM.thin, dash: [1, 1] },
      ),
    ),
    ...halfInk(flag, x, y),
    ...halfInk(flag, x + HALF_MM + WRAP_MM, y),
  ];
}

function halfInk({ lines }: Flag, x: number, y: number): string[] {
  const top = y + (HEIGHT_MM - lines.length * PITCH_MM) / 2;
  return lines.map((line, at) => inkText(x + 2, top + (at + 0.5) * PITCH_MM, fitText(line, SMALLEST_MM, HALF_MM - 4)));
}
