import type { Box } from "../../geometry/index.ts";
import type { Picture } from "../../picture/index.ts";
import { drawPage, type DrawingWords, type DrawnPage } from "./drawing-page.ts";
import { tilesOf, type Tile, type WirePiece } from "./tiles.ts";

/** A drawing set on as few pages as carry it with 9 pt lettering. */
export interface DrawingPlan {
  readonly pages: readonly DrawnPage[];
  readonly mmPerStep: number;
}

/** Millimetres per grid step; 5 is full size. Lettering never shrinks with them: below 4 mm the 9 pt marks inside a symbol collide. */
const SCALES_MM = [6, 5.5, 5, 4.5, 4];
/** With this much room to spare on the last page the drawing stands at its top, and lists may follow under it. */
export const LEAST_LIST_MM = 45;
/** How many more pages than the fewest are worth it to letter every wire in full. */
const EXTRA_PAGES = 2;

/**
 * The plan with the fewest pages, then the largest symbols, on which every wire and part carries all its words; failing that,
 * the one with the fewest cut short to their id (the lists have them in full).
 */
export function planDrawing(picture: Picture, words: DrawingWords, room: Box): DrawingPlan {
  const choices = SCALES_MM.map((mmPerStep) => ({ mmPerStep, tiles: tilesFor(picture, room, mmPerStep) }));
  choices.sort((a, b) => a.tiles.length - b.tiles.length || b.mmPerStep - a.mmPerStep);
  const fewest = choices[0]!.tiles.length;
  let best: { plan: DrawingPlan; crowded: number } | null = null;
  for (const { mmPerStep, tiles } of choices) {
    if (best !== null && tiles.length > fewest + EXTRA_PAGES) break;
    const pages = tiles.map((tile) => drawPage(tile, words, pageSetting(tile, tiles, picture, room, mmPerStep)));
    const crowded = pages.reduce((sum, page) => sum + page.crowded.length, 0);
    if (crowded === 0) return { pages, mmPerStep };
    if (best === null || crowded < best.crowded) best = { plan: { pages, mmPerStep }, crowded };
  }
  return best!.plan;
}

/** Pages the drawing comes to at the smallest symbols. */
export function fewestPages(picture: Picture, room: Box): number {
  return tilesFor(picture, room, SCALES_MM.at(-1)!).length;
}

function tilesFor(picture: Picture, room: Box, mmPerStep: number): Tile[] {
  return tilesOf(picture, {
    width: (room.right - room.left) / mmPerStep,
    height: (room.bottom - room.top) / mmPerStep,
  });
}

function pageSetting(tile: Tile, tiles: readonly Tile[], picture: Picture, room: Box, mmPerStep: number) {
  const spareMm = room.bottom - room.top - (tile.box.bottom - tile.box.top) * mmPerStep;
  return {
    room,
    mmPerStep,
    atTop: tile === tiles.at(-1) && spareMm >= LEAST_LIST_MM,
    joints: picture.joints,
    continues: (piece: WirePiece, end: "start" | "end") => {
      const [x, y] = end === "start" ? piece.route[0]! : piece.route.at(-1)!;
      const at = tiles.findIndex(
        (other) =>
          other !== tile &&
          other.wires.some(
            ({ wire, route }) =>
              wire.id === piece.wire.id && [route[0]!, route.at(-1)!].some(([a, b]) => a === x && b === y),
          ),
      );
      return at < 0 ? "next page" : `page ${at + 1}`;
    },
  };
}
