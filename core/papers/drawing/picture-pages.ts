import type { Box } from "../../geometry/index.ts";
import type { Picture } from "../../picture/index.ts";
import { flow, type Block } from "../layout/index.ts";
import type { DrawingWords } from "./drawing-page.ts";
import { fewestPages, LEAST_LIST_MM, planDrawing } from "./drawing-plan.ts";
import type { FuseBand } from "./fuse-band.ts";
import { legendHeight, legendInk } from "./mark-legend.ts";

/**
 * A drawing on as many pages as it needs, each with the legend of its marks, the fuses in few words on the first, and lists under
 * and behind it: the ink of each page.
 */
export function picturePages(
  picture: Picture,
  words: DrawingWords,
  lists: readonly Block[],
  inside: Box,
  fuses: FuseBand | null = null,
): string[][] {
  const whole = { ...inside, bottom: inside.bottom - legendHeight(inside.right - inside.left) };
  const lines = fuses === null ? 0 : linesToSpare(picture, whole, fuses);
  const room = { ...whole, bottom: whole.bottom - (fuses?.heightMm(lines) ?? 0) };
  const { pages, mmPerStep } = planDrawing(picture, words, room);
  const freeTop = pages.at(-1)!.bottomMm + 1;
  const foot = pages.length > 1 ? whole : room;
  const isRoomy = foot.bottom - freeTop >= LEAST_LIST_MM;
  const listed = flow(lists, inside, { ...foot, top: isRoomy ? freeTop : foot.bottom });
  const contents = pages.map(({ ink }) => [...ink, ...legendInk({ ...inside, top: whole.bottom }, mmPerStep)]);
  contents[0]!.push(...(fuses?.ink({ ...inside, top: room.bottom }, lines) ?? []));
  contents.at(-1)!.push(...listed[0]!);
  return [...contents, ...listed.slice(1)];
}

/** As many lines of the fuse band as cost the drawing no page more; at least one. */
function linesToSpare(picture: Picture, room: Box, fuses: FuseBand): number {
  const pagesWith = (lines: number) =>
    fewestPages(picture, { ...room, bottom: room.bottom - (lines === 0 ? 0 : fuses.heightMm(lines)) });
  const most = pagesWith(0);
  let lines = fuses.mostLines;
  while (lines > 1 && pagesWith(lines) > most) lines--;
  return lines;
}
