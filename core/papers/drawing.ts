import type { Box } from "../geometry/index.ts";
import { pictureOf } from "../picture/index.ts";
import { circuitMetadata } from "./circuit-in-svg.ts";
import { cardLists } from "./drawing/card-lists.ts";
import type { DrawingWords } from "./drawing/drawing-page.ts";
import { planDrawing } from "./drawing/drawing-plan.ts";
import { legendHeight, legendInk } from "./drawing/mark-legend.ts";
import { fitText, flow, frameInk, frameInside, inkSheet, sheetOf, SMALLEST_MM } from "./layout/index.ts";
import { isHotAtRest, wireHot } from "./lists/index.ts";
import type { Paper, PaperOptions, PaperSource } from "./paper.ts";
import { wireName } from "./words/index.ts";
import { formatNumber, formatWireSize } from "../units/index.ts";

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

/** Less room than this under the drawing is left blank: the lists then begin on the next page. */
const LEAST_LIST_MM = 45;

function drawingPages(source: PaperSource, options: PaperOptions): string[] {
  const sheet = sheetOf(options);
  const inside = frameInside(sheet);
  const room = { ...inside, bottom: inside.bottom - legendHeight(inside.right - inside.left) };
  const drawn = drawnPages(source, room);
  const lists = flow(cardLists(source, options, inside.right - inside.left), inside, { ...room, top: drawn.freeTop });
  const contents = drawn.pages.map((ink) => [...ink, ...legendInk({ ...inside, top: room.bottom })]);
  contents.at(-1)!.push(...lists[0]!);
  contents.push(...lists.slice(1));
  const metadata = circuitMetadata(source.document);
  const words = source.document.sheet ?? {};
  return contents.map((ink, at) => {
    const frame = frameInk(sheet, { paper: drawing.title, words, page: at + 1, pages: contents.length });
    return inkSheet(sheet, words.title ?? drawing.title, [...frame, ...ink], metadata);
  });
}

/** The drawing's own pages, and where on the last of them the lists may begin. */
function drawnPages(
  source: PaperSource,
  room: Box,
): { readonly pages: readonly (readonly string[])[]; readonly freeTop: number } {
  const picture = pictureOf(source.document);
  const words = drawingWords(source);
  const atTop = planDrawing(picture, words, room, true);
  const freeTop = atTop.pages.at(-1)!.bottomMm + 1;
  if (room.bottom - freeTop >= LEAST_LIST_MM) return { pages: atTop.pages.map(({ ink }) => ink), freeTop };
  return { pages: planDrawing(picture, words, room, false).pages.map(({ ink }) => ink), freeTop: room.bottom };
}

/** A label or colour as it may stand on a wire: the wire list gives it in full. */
function shortened(text: string): string {
  return fitText(text, SMALLEST_MM, 26);
}

function drawingWords(source: PaperSource): DrawingWords {
  const { netlist, report } = source;
  return {
    wireLook: (id) => {
      const wire = netlist.wireAt.get(id);
      return wire ? wireHot(wire, source) : "unknown";
    },
    wireWords: (id) => {
      const wire = netlist.wireAt.get(id)?.wire;
      const over = `${wire ? shortened(wireName(wire)) : id} ${shortened(wire?.colour ?? "colour ?")}`;
      const length = wire?.metres === undefined ? "length ?" : `${formatNumber(wire.metres)} m`;
      const under = `${wire?.size === undefined ? "size ?" : formatWireSize(wire.size)} · ${length}`;
      return { line: `${over} · ${under}`, over, under };
    },
    terminalMark: (address) => {
      const standing = report.terminals[address];
      if (!standing || standing.hot === "never" || netlist.terminalAt.get(address)?.cover === "cavity") return null;
      if (standing.bare && isHotAtRest(standing.hot)) return "bare";
      return { mark: standing.hot, viaLoad: standing.via === "load" };
    },
  };
}
