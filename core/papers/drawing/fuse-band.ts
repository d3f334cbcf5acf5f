import { splitAddress } from "../../document/index.ts";
import type { Box } from "../../geometry/index.ts";
import { fitText, inkLine, inkText, RULE_MM, SMALLEST_MM, textWidthMm } from "../layout/index.ts";
import { deviceRows, largestWords, type DeviceRow } from "../lists/index.ts";
import type { PaperSource } from "../paper.ts";
import { ampsWords } from "../words/index.ts";

/** The fuses in few words at the foot of the card's front, so that this one sheet serves in the glovebox. */
export interface FuseBand {
  /** Lines that say it all, but no more than a drawing can spare. */
  readonly mostLines: number;
  heightMm(lines: number): number;
  /** Set at the top of `box`; how many found no room on so many lines is said at the end. */
  ink(box: Box, lines: number): string[];
}

const HEAD = "Fuses and their largest spare";
const MOST_LINES = 5;
const LINE_MM = 4.4;
const GAP_MM = 3.2;
const ABOVE_MM = 0.8;

/** `null`: the drawing has none. */
export function fuseBand(source: PaperSource, widthMm: number): FuseBand | null {
  const entries = deviceRows(source).map((device) => fitText(entryWords(device), SMALLEST_MM, widthMm));
  if (entries.length === 0) return null;
  return {
    mostLines: Math.min(MOST_LINES, setInLines([HEAD, ...entries], widthMm).length),
    heightMm: (lines) => ABOVE_MM + lines * LINE_MM,
    ink: (box, lines) =>
      asMuchAsFits(entries, widthMm, lines).flatMap((line, at) =>
        lineInk(line, box.left, box.top + ABOVE_MM + (at + 0.5) * LINE_MM),
      ),
  };
}

/** "F1 15 A, spare 15 A, 0.15 m from BAT · +": the lists have names, colours and both units. */
function entryWords(device: DeviceRow): string {
  const [id, terminal] = splitAddress(device.address);
  const name = terminal === "" ? id.toUpperCase() : `${id.toUpperCase()} · ${terminal}`;
  const fitted = device.element.spec.closed ? "" : " not fitted";
  const place = device.near === null ? "" : `, ${device.near}`;
  return `${name} ${ampsWords(device.ratingA)}${fitted}, spare ${largestWords(device)}${place}`;
}

function asMuchAsFits(entries: readonly string[], widthMm: number, lines: number): string[][] {
  for (let shown = entries.length; shown >= 0; shown--) {
    const rest = entries.length - shown;
    const set = setInLines(
      [HEAD, ...entries.slice(0, shown), ...(rest === 0 ? [] : [`${rest} more in the list`])],
      widthMm,
    );
    if (set.length <= lines) return set;
  }
  return [];
}

/** Pieces side by side, line after line. */
function setInLines(pieces: readonly string[], widthMm: number): string[][] {
  const lines: string[][] = [[]];
  let used = 0;
  for (const piece of pieces) {
    const pieceMm = textWidthMm(piece, SMALLEST_MM);
    if (used > 0 && used + pieceMm > widthMm) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)!.push(piece);
    used += pieceMm + GAP_MM;
  }
  return lines;
}

/** Pieces parted by upright strokes. */
function lineInk(pieces: readonly string[], left: number, y: number): string[] {
  let x = left;
  return pieces.flatMap((piece, at) => {
    const bar = x - GAP_MM / 2;
    const ink = inkText(x, y, piece);
    x += textWidthMm(piece, SMALLEST_MM) + GAP_MM;
    if (at === 0) return [ink];
    const stroke = [
      [bar, y - 1.7],
      [bar, y + 1.7],
    ] as const;
    return [inkLine(stroke, { widthMm: RULE_MM.normal }), ink];
  });
}
