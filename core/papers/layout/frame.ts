import type { Sheet as SheetWords } from "../../document/index.ts";
import type { Box } from "../../geometry/index.ts";
import { inkBox, inkLine, inkText, RULE_MM } from "./ink.ts";
import { fitText, SMALLEST_MM, textWidthMm } from "./lettering.ts";
import type { Sheet } from "./sheet.ts";

/** What stands round every page of every paper: whose circuit it is, which paper, which page. */
export interface Frame {
  readonly paper: string;
  readonly words: SheetWords;
  readonly page: number;
  readonly pages: number;
}

const CAUTION = "Battery negative off first, fuse in last. A plan is not an inspection.";
const TITLE_MM = 4.6;
const TAB_MM = 7.4;
const BAND_MM = TAB_MM + 7;
const FOOT_MM = 6.4;

/** The room left between title band and foot. */
export function frameInside(sheet: Sheet): Box {
  return { left: sheet.left, top: sheet.top + BAND_MM, right: sheet.right, bottom: sheet.bottom - FOOT_MM };
}

/** Title band and foot. A blank line is left to write on where the drawing says nothing. */
export function frameInk(sheet: Sheet, frame: Frame): string[] {
  return [...titleBand(sheet, frame), ...foot(sheet, frame)];
}

function titleBand(sheet: Sheet, { paper, words }: Frame): string[] {
  const tabWidth = textWidthMm(paper, TITLE_MM) + 6;
  const middle = sheet.top + TAB_MM / 2;
  const title = fitText(words.title ?? "", TITLE_MM, sheet.right - sheet.left - tabWidth - 4);
  const ruleY = sheet.top + TAB_MM;
  return [
    inkBox(sheet.left, sheet.top, tabWidth, TAB_MM, { widthMm: 0, fill: "black" }),
    inkText(sheet.left + 3, middle, paper, { size: TITLE_MM, white: true }),
    title === ""
      ? inkLine(
          [
            [sheet.left + tabWidth + 4, ruleY - 1.8],
            [sheet.right, ruleY - 1.8],
          ],
          { widthMm: RULE_MM.thin },
        )
      : inkText(sheet.left + tabWidth + 4, middle, title, { size: TITLE_MM }),
    inkLine(
      [
        [sheet.left, ruleY],
        [sheet.right, ruleY],
      ],
      { widthMm: RULE_MM.thick },
    ),
    ...fields(sheet, words, ruleY + 3.2),
  ];
}

function fields(sheet: Sheet, words: SheetWords, y: number): string[] {
  const entries = [
    { name: "Vehicle", text: words.vehicle, share: 0.4 },
    { name: "Revision", text: words.revision, share: 0.15 },
    { name: "Date", text: words.date, share: 0.18 },
    { name: "Drawn by", text: words.drawnBy, share: 0.27 },
  ];
  const all = sheet.right - sheet.left;
  let x = sheet.left;
  return entries.flatMap(({ name, text, share }) => {
    const left = x;
    const width = all * share;
    x += width;
    const valueX = left + textWidthMm(name, SMALLEST_MM) + 1.6;
    const room = left + width - 3 - valueX;
    const value = fitText(text ?? "", SMALLEST_MM, room);
    return [
      inkText(left, y, name),
      value === ""
        ? inkLine(
            [
              [valueX, y + 1.6],
              [valueX + room, y + 1.6],
            ],
            { widthMm: RULE_MM.thin },
          )
        : inkText(valueX, y, value),
    ];
  });
}

function foot(sheet: Sheet, { page, pages }: Frame): string[] {
  const y = sheet.bottom - 2;
  const count = `Page ${page} of ${pages}`;
  const room = sheet.right - sheet.left - textWidthMm(count, SMALLEST_MM) - 4;
  return [
    inkLine(
      [
        [sheet.left, sheet.bottom - 4.4],
        [sheet.right, sheet.bottom - 4.4],
      ],
      { widthMm: RULE_MM.thin },
    ),
    inkText(sheet.left, y, fitText(CAUTION, SMALLEST_MM, room)),
    inkText(sheet.right, y, count, { anchor: "end" }),
  ];
}
