import type { Document } from "../document/index.ts";
import { growBox, unionBox, type Box } from "../geometry/index.ts";
import { pictureOf, type Picture } from "../picture/index.ts";
import { strokeInk } from "./drawing/symbol-ink.ts";
import { boxOnPage, onPage, type View } from "./drawing/view.ts";
import { wireInk } from "./drawing/wire-ink.ts";
import { inkBox, inkCircle, inkSheet, inkText, RULE_MM } from "./layout/index.ts";
import { changeRows, type ChangeRow } from "./lists/index.ts";

/** Two states of a drawing side by side: a picture of each, in one frame and scale, and what differs in words. */
export interface Comparison {
  /** SVG files; what was taken out stands framed in the first, what was added in the second, what changed in both. */
  readonly before: string;
  readonly after: string;
  readonly rows: readonly ChangeRow[];
}

const MM_PER_STEP = 5;
const JOINT_MM = 0.75;
const RIM_STEPS = 3;

export function compare(before: Document, after: Document): Comparison {
  const rows = changeRows(before, after);
  const [old, now] = [pictureOf(before), pictureOf(after)];
  const frame = growBox(unionBox(old.box, now.box), RIM_STEPS);
  return {
    before: pictureInk("Before", old, frame, wordsFor(rows, "removed")),
    after: pictureInk("After", now, frame, wordsFor(rows, "added")),
    rows,
  };
}

/** What happened to each id, as far as this side shows it. */
function wordsFor(rows: readonly ChangeRow[], side: "removed" | "added"): ReadonlyMap<string, string> {
  return new Map(rows.flatMap(({ what, id }) => (what === side || what === "changed" ? [[id, what] as const] : [])));
}

function pictureInk(title: string, picture: Picture, frame: Box, differs: ReadonlyMap<string, string>): string {
  const view: View = { mmPerStep: MM_PER_STEP, leftMm: -frame.left * MM_PER_STEP, topMm: -frame.top * MM_PER_STEP };
  const [widthMm, heightMm] = [frame.right - frame.left, frame.bottom - frame.top].map(
    (steps) => steps * MM_PER_STEP,
  ) as [number, number];
  const sheet = { widthMm, heightMm, left: 0, top: 0, right: widthMm, bottom: heightMm };
  const ink = [
    ...picture.wires.flatMap(({ id, route, hops }) =>
      wireInk(
        route.map((point) => onPage(view, point)),
        hops.map((hop) => onPage(view, hop)),
        differs.has(id) ? "always" : "switched",
      ),
    ),
    ...picture.joints.map((joint) => inkCircle(onPage(view, joint), JOINT_MM, { fill: "black" })),
    ...picture.parts.flatMap(({ strokes }) => strokes.map((stroke) => strokeInk(stroke, view))),
    ...[...picture.parts, ...picture.wires].flatMap(({ lettering }) =>
      lettering.map(({ at, text, anchor, upright }) => inkText(...onPage(view, at), text, { anchor, upright })),
    ),
    ...picture.parts.flatMap(({ id, box }) => differenceInk(boxOnPage(view, growBox(box, 0.5)), differs.get(id))),
  ];
  return inkSheet(sheet, title, ink);
}

function differenceInk({ left, top, right, bottom }: Box, word: string | undefined): string[] {
  if (word === undefined) return [];
  return [
    inkBox(left, top, right - left, bottom - top, { widthMm: RULE_MM.heavy }),
    inkText((left + right) / 2, bottom + 3, word.toUpperCase(), { anchor: "middle" }),
  ];
}
