import type { Box, Point } from "../../geometry/index.ts";
import { markLegend, markStrokes, type Mark } from "../../parts/index.ts";
import { inkLine, inkText, RULE_MM, SMALLEST_MM, textWidthMm } from "../layout/index.ts";
import { strokeInk } from "./symbol-ink.ts";
import { wireInk, type WireLook } from "./wire-ink.ts";

const SAMPLE_MM = 9;
const SAMPLE_GAP_MM = 1.4;
const ITEM_GAP_MM = 4;
const ROW_MM = 5;
const BAR_MM = 30;

/** How a terminal is marked: as on the Board, or with a star where metal a hand can meet is live with everything off. */
export type TerminalMark = { readonly mark: Mark; readonly viaLoad: boolean } | "bare";

const WIRE_MEANINGS: readonly { readonly look: WireLook; readonly mark: Mark | null; readonly text: string }[] = [
  { look: "always", mark: "always", text: markLegend.always },
  { look: "at-rest", mark: "at-rest", text: markLegend["at-rest"] },
  { look: "switched", mark: "switched", text: markLegend.switched },
  { look: "never", mark: null, text: "return, or never live" },
];

/** A grid step at full size; marks keep it however small the drawing. */
const FULL_SIZE_MM = 5;
const STAR_MM = 2.1;
export const MARK_REACH_MM = { mark: 1.3, bare: STAR_MM } as const;

export function terminalMarkInk(at: Point, mark: TerminalMark): string[] {
  if (mark === "bare") return [starInk(at)];
  const view = { mmPerStep: FULL_SIZE_MM, leftMm: at[0], topMm: at[1] };
  return markStrokes(mark.mark, mark.viaLoad).map((stroke) => strokeInk(stroke, view));
}

function starInk(at: Point): string {
  const rays = Array.from({ length: 16 }, (_, ray): Point => {
    const angle = (ray * Math.PI) / 8;
    const radius = ray % 2 === 0 ? STAR_MM : STAR_MM / 2;
    return [at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle)];
  });
  return inkLine(rays, { closed: true, fill: "black", widthMm: RULE_MM.thin });
}

/** Room the legend takes at this width. */
export function legendHeight(widthMm: number): number {
  return rowsOf(itemsAt(FULL_SIZE_MM), widthMm).length * ROW_MM + 1;
}

/** What the marks on the drawing mean, a scale bar, and how large the symbols are drawn. */
export function legendInk(box: Box, mmPerStep: number): string[] {
  const rows = rowsOf(itemsAt(mmPerStep), box.right - box.left);
  return rows.flatMap((row, at) => {
    const y = box.top + 1 + (at + 0.5) * ROW_MM;
    let x = box.left;
    return row.flatMap((item) => {
      const ink = item.draw(x, y);
      x += item.widthMm + ITEM_GAP_MM;
      return ink;
    });
  });
}

interface Item {
  readonly widthMm: number;
  draw(x: number, y: number): string[];
}

const MARK_ITEMS: readonly Item[] = [
  ...WIRE_MEANINGS.map(({ look, mark, text }) =>
    sample(text, SAMPLE_MM, (x, y) => [
      ...wireInk(
        [
          [x, y],
          [x + SAMPLE_MM - 1, y],
        ],
        [],
        look,
      ),
      ...(mark === null ? [] : terminalMarkInk([x + SAMPLE_MM - 1, y], { mark, viaLoad: false })),
    ]),
  ),
  sample("bare and live with everything off", 2 * STAR_MM, (x, y) => [starInk([x + STAR_MM, y])]),
];

function itemsAt(mmPerStep: number): Item[] {
  const percent = Math.round((100 * mmPerStep) / FULL_SIZE_MM);
  return [...MARK_ITEMS, sample(`${BAR_MM} mm; symbols at ${percent} %`, BAR_MM, scaleBar)];
}

function sample(text: string, sampleMm: number, draw: (x: number, y: number) => string[]): Item {
  return {
    widthMm: sampleMm + SAMPLE_GAP_MM + textWidthMm(text, SMALLEST_MM),
    draw: (x, y) => [...draw(x, y), inkText(x + sampleMm + SAMPLE_GAP_MM, y, text)],
  };
}

function scaleBar(x: number, y: number): string[] {
  const ticks = [0, 10, 20, 30].map((at) =>
    inkLine([
      [x + at, y - 1.4],
      [x + at, y + 1.4],
    ]),
  );
  return [
    inkLine(
      [
        [x, y],
        [x + BAR_MM, y],
      ],
      { widthMm: RULE_MM.normal },
    ),
    ...ticks,
  ];
}

function rowsOf(items: readonly Item[], widthMm: number): Item[][] {
  const rows: Item[][] = [[]];
  let used = 0;
  for (const item of items) {
    if (used > 0 && used + item.widthMm > widthMm) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)!.push(item);
    used += item.widthMm + ITEM_GAP_MM;
  }
  return rows;
}
