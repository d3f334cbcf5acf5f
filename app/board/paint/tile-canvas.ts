import { TILE_PX, type TileCanvas } from "./tiles.ts";

/** A canvas for one tile, off the page. `onEmptied`: the browser took its pixels away and it may be drawn on again. */
export function makeTileCanvas(isOpaque: boolean, onEmptied?: () => void): TileCanvas {
  const canvas = document.createElement("canvas");
  canvas.width = TILE_PX;
  canvas.height = TILE_PX;
  if (onEmptied !== undefined) canvas.addEventListener("contextrestored", onEmptied);
  const context = canvas.getContext("2d", { alpha: !isOpaque });
  if (context === null)
    throw new Error("makeTileCanvas: the browser gave no 2D canvas context; close other pages and load again");
  return { image: canvas, context };
}
