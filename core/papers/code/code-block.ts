import { correction, generate, mode, type Bitmap2D } from "lean-qr";
import type { Document } from "../../document/index.ts";
import {
  headingBlock,
  inkBox,
  inkShape,
  inkText,
  LINE_PITCH,
  mm,
  paragraphBlock,
  SMALLEST_MM,
  wrapText,
  type Block,
} from "../layout/index.ts";
import { circuitPayload } from "./payload.ts";

/** Larger codes ask too much of a phone held by hand; ISO/IEC 18004 goes to 40. */
const LARGEST_VERSION = 25;
/** A module no smaller than this is read off a creased card; our own choice. */
const MODULE_MM = { least: 0.5, most: 0.8 } as const;
/** As large as the code is set where its modules may grow. */
const WANTED_MM = 56;
/** Sizes go up in such steps, so that the modules of a picture of the page come out alike. */
const STEP_MM = 0.05;
/** Blank modules round the code, ISO/IEC 18004. */
const QUIET = 4;
const LINE_MM = SMALLEST_MM * LINE_PITCH;

const HOW_TO =
  "The whole drawing is in this code. Scan it with any phone, copy the text it gives, and paste it in Groundstrap: on the Board, or in Papers under Open from a code. No network is needed. The SVG and PDF files of this card carry the drawing too.";
const TOO_BIG =
  "This drawing is too big for a code to scan. Keep its file: the SVG and the PDF of this card carry the drawing, and Groundstrap opens them.";

/** The circuit as a code to scan, with what to do with it; or that it is too big for one. */
export function codeBlocks(document: Document, widthMm: number): Block[] {
  const heading = headingBlock("The drawing itself", widthMm);
  const code = codeOf(circuitPayload(document));
  if (code === null) return [heading, paragraphBlock(TOO_BIG, widthMm)];
  const modules = code.size + 2 * QUIET;
  const moduleMm = Math.min(
    MODULE_MM.most,
    Math.max(MODULE_MM.least, Math.floor(WANTED_MM / modules / STEP_MM) * STEP_MM),
  );
  const sideMm = modules * moduleMm;
  const lines = wrapText(HOW_TO, SMALLEST_MM, widthMm - sideMm - 3, 12);
  const draw = (x: number, y: number) => [
    inkBox(x, y + 1, sideMm, sideMm, { widthMm: 0, fill: "white" }),
    inkShape(outline(code, x + QUIET * moduleMm, y + 1 + QUIET * moduleMm, moduleMm)),
    ...lines.map((line, at) => inkText(x + sideMm + 3, y + 1 + QUIET * moduleMm + (at + 0.5) * LINE_MM, line)),
  ];
  return [heading, { strips: [{ heightMm: Math.max(sideMm, lines.length * LINE_MM + QUIET) + 2, draw }] }];
}

/** `null`: more than the largest code holds. */
function codeOf(payload: string): Bitmap2D | null {
  try {
    return generate(mode.alphaNumeric(payload), {
      minCorrectionLevel: correction.L,
      maxVersion: LARGEST_VERSION,
    });
  } catch {
    return null;
  }
}

/** Every row's runs of dark modules as boxes of one path, in millimetres. */
function outline(code: Bitmap2D, left: number, top: number, moduleMm: number): string {
  const pieces: string[] = [];
  for (let y = 0; y < code.size; y++) {
    for (let x = 0; x < code.size; x++) {
      if (!code.get(x, y)) continue;
      let run = 1;
      while (code.get(x + run, y)) run++;
      const width = mm(run * moduleMm);
      pieces.push(`M${mm(left + x * moduleMm)} ${mm(top + y * moduleMm)}h${width}v${mm(moduleMm)}h-${width}z`);
      x += run;
    }
  }
  return pieces.join("");
}
