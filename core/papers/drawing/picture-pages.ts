import type { Box } from "../../geometry/index.ts";
import type { Picture } from "../../picture/index.ts";
import { flow, type Block } from "../layout/index.ts";
import type { DrawingWords } from "./drawing-page.ts";
import { planDrawing } from "./drawing-plan.ts";
import { legendHeight, legendInk } from "./mark-legend.ts";

/** Less room than this under the drawing is left blank: the lists then begin on the next page. */
const LEAST_LIST_MM = 45;

/** A drawing on as many pages as it needs, each with the legend of its marks, and lists under and behind it: the ink of each page. */
export function picturePages(picture: Picture, words: DrawingWords, lists: readonly Block[], inside: Box): string[][] {
  const room = { ...inside, bottom: inside.bottom - legendHeight(inside.right - inside.left) };
  const drawn = drawnPages(picture, words, room);
  const listed = flow(lists, inside, { ...room, top: drawn.freeTop });
  const contents = drawn.pages.map((ink) => [...ink, ...legendInk({ ...inside, top: room.bottom }, drawn.mmPerStep)]);
  contents.at(-1)!.push(...listed[0]!);
  return [...contents, ...listed.slice(1)];
}

/** The drawing's own pages, and where on the last of them the lists may begin. */
function drawnPages(picture: Picture, words: DrawingWords, room: Box) {
  const atTop = planDrawing(picture, words, room, true);
  const freeTop = atTop.pages.at(-1)!.bottomMm + 1;
  const isRoomy = room.bottom - freeTop >= LEAST_LIST_MM;
  const { pages, mmPerStep } = isRoomy ? atTop : planDrawing(picture, words, room, false);
  return { pages: pages.map(({ ink }) => ink), mmPerStep, freeTop: isRoomy ? freeTop : room.bottom };
}
