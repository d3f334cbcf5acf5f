import type { Box } from "../../geometry/index.ts";
import type { Block, Strip } from "./strip.ts";

/**
 * Blocks set one under the other, one box per page, the first of them perhaps smaller; a page break falls between strips, never
 * after one that keeps with the next. A strip taller than a page starts a page of its own.
 * Gives the ink of each page; at least one page, whose ink may be none.
 */
export function flow(blocks: readonly Block[], following: Box, first: Box = following): string[][] {
  const pages: string[][] = [[]];
  let box = first;
  let y = box.top;
  const put = (strip: Strip) => {
    pages.at(-1)!.push(...strip.draw(box.left, y));
    y += strip.heightMm;
  };
  const turn = () => {
    pages.push([]);
    box = following;
    y = box.top;
  };
  const strips = blocks.flatMap((block) =>
    block.strips.map((strip, at) => ({ strip, head: block.head, isFirst: at === 0 })),
  );
  for (const [at, { strip, head, isFirst }] of strips.entries()) {
    const isStarted = y > box.top || box !== following;
    if (isStarted && y + groupMm(strips, at) > box.bottom + 1e-6) turn();
    if (head && (isFirst || y === box.top)) put(head);
    put(strip);
  }
  return pages;
}

/** Height of the strip with all that must stand under it on the same page. */
function groupMm(strips: readonly { strip: Strip; head: Strip | undefined; isFirst: boolean }[], from: number): number {
  let heightMm = 0;
  for (let at = from; at < strips.length; at++) {
    const { strip, head, isFirst } = strips[at]!;
    heightMm += strip.heightMm + (head && isFirst ? head.heightMm : 0);
    if (!strip.keepWithNext) break;
  }
  return heightMm;
}
