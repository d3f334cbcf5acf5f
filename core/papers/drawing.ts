import { pictureOf } from "../picture/index.ts";
import { circuitMetadata } from "./circuit-in-svg.ts";
import { cardLists } from "./drawing/card-lists.ts";
import { fuseBand } from "./drawing/fuse-band.ts";
import { picturePages } from "./drawing/picture-pages.ts";
import { reportWords } from "./drawing/report-words.ts";
import { frameInside, sheetOf } from "./layout/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { framed } from "./printed.ts";

/** The vehicle card: the drawing with all a person needs to work on it, and the circuit itself inside the file. */
export const drawing: Paper = {
  kind: "drawing",
  title: "Vehicle card",
  about: "The diagram to keep with the vehicle: wires, fuses, relay pins, grounds, and what is hot with the key out.",
  media: "image/svg+xml",
  extension: "svg",
  make: (source, options) => drawingPages(source, options)[0]!,
  pages: drawingPages,
};

function drawingPages(source: PaperSource, options: PaperOptions): string[] {
  const sheet = sheetOf(options);
  const inside = frameInside(sheet);
  const widthMm = inside.right - inside.left;
  const lists = cardLists(source, options, widthMm);
  const fuses = fuseBand(source, widthMm);
  const contents = picturePages(pictureOf(source.document), reportWords(source), lists, inside, fuses);
  return framed(drawing.title, source.document, sheet, contents, circuitMetadata(source.document));
}
