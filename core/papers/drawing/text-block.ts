import type { Box, Point } from "../../geometry/index.ts";
import { HALF_LINE, inkText, SMALLEST_MM, textWidthMm, type TextStyle } from "../layout/index.ts";

/** Lines of lettering with one place on the page. */
export interface TextBlock {
  readonly lines: readonly string[];
  /** Middle of the first line at the anchor, millimetres. */
  readonly at: Point;
  readonly anchor: NonNullable<TextStyle["anchor"]>;
  /** Reads upwards; one line only. */
  readonly upright?: boolean;
}

const LINE_MM = SMALLEST_MM * 1.24;
export const HALF_LINE_MM = SMALLEST_MM * HALF_LINE;

export function blockWidth(lines: readonly string[]): number {
  return Math.max(0, ...lines.map((line) => textWidthMm(line, SMALLEST_MM)));
}

export function blockHeight(lines: readonly string[]): number {
  return (lines.length - 1) * LINE_MM + 2 * HALF_LINE_MM;
}

/** The room a block takes, ascenders and descenders included. */
export function blockBox({ lines, at, anchor, upright }: TextBlock): Box {
  const width = blockWidth(lines);
  const before = anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width;
  const half = HALF_LINE_MM;
  if (upright)
    return { left: at[0] - half, right: at[0] + half, top: at[1] - (width - before), bottom: at[1] + before };
  return {
    left: at[0] - before,
    right: at[0] - before + width,
    top: at[1] - half,
    bottom: at[1] - half + blockHeight(lines),
  };
}

export function blockInk(block: TextBlock): string[] {
  const style = { anchor: block.anchor, ...(block.upright ? { upright: true } : {}) };
  return block.lines.map((line, at) => inkText(block.at[0], block.at[1] + at * LINE_MM, line, style));
}

/** A block of these lines whose box has this left top corner. */
export function blockAt(lines: readonly string[], left: number, top: number): TextBlock {
  return { lines, at: [left, top + HALF_LINE_MM], anchor: "start" };
}
