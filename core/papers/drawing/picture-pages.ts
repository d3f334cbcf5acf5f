import type { Box } from "../../geometry/index.ts";
import type { Picture } from "../../picture/index.ts";
import { flow, type Block } from "../layout/index.ts";
import type { DrawingWords } from "./drawing-page.ts";
import { LEAST_LIST_MM, planDrawing } from "./drawing-plan.ts";
import { legendHeight, legendInk } from "./mark-legend.ts";

/** A drawing on as many pages as it needs, each with the legend of its marks, and lists under and behind it: the ink of each page. */
export function picturePages(picture: Picture, words: DrawingWords, lists: readonly Block[], inside: Box): string[][] {
  const room = { ...inside, bottom: inside.bottom - legendHeight(inside.right - inside.left) };
  const { pages, mmPerStep } = planDrawing(picture, words, room);
  const freeTop = pages.at(-1)!.bottomMm + 1;
  const isRoomy = room.bottom - freeTop >= LEAST_LIST_MM;
  const listed = flow(lists, inside, { ...room, top: isRoomy ? freeTop : room.bottom });
  const contents = pages.map(({ ink }) => [...ink, ...legendInk({ ...inside, top: room.bottom }, mmPerStep)]);
  contents.at(-1)!.push(...listed[0]!);
  return [...contents, ...listed.slice(1)];
}
