import { TILE_PX, type TileCanvas } from "./tiles.ts";

/** A canvas for one tile, off the page. */
export function makeTileCanvas(isOpaque: boolean): TileCanvas {
  const canvas = document.createElement("canvas");
  canvas.width = TILE_PX;
  canvas.height = TILE_PX;
  const context = canvas.getContext("2d", { alpha: !isOpaque });
  if (context === null)
    throw new Error("makeTileCanvas: the browser gave no 2D canvas context; close other pages and load again");
  return { image: canvas, context };
}
