import { box, corners, dot, letters, line, outline } from "./drawing.ts";
import { fuseOhm } from "./fuse.ts";
import { fuseBody } from "./glyphs.ts";
import { milliohms, ratingAmps } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { flag, list, rating } from "./setting.ts";
import { tab } from "./terminal.ts";
import { amount } from "./wording.ts";

const unsaidWay = { ratingA: null, fitted: true, milliohm: null };

/** A block of blade fuses on one feed; a report names a way by its terminal. */
export const fuseBlock = definePart({
  kind: "fuse-block",
  title: "Fuse block",
  words: ["fuse box", "fuse panel", "fuse holder", "distribution", "protection"],
  shelf: "protection",
  letter: "x",
  about: "Several blade fuses fed by one wire, one way for each circuit.",
  settings: {
    ways: list<{ ratingA: number | null; fitted: boolean; milliohm: number | null }>(
      "Ways",
      [unsaidWay, unsaidWay, unsaidWay, unsaidWay],
      "One row for each way of the block, in the order of its numbers.",
      {
        ratingA: rating("Rating", "A", { ...ratingAmps, help: "Printed on the fuse in this way." }),
        fitted: flag("Fitted", true, "Off: this way has no fuse in it."),
        milliohm: rating("Resistance", "mohm", {
          ...milliohms,
          help: "Of the fuse itself, cold.",
          follows: "the usual resistance for its rating",
        }),
      },
    ),
    ratedA: rating("Block rating", "A", { ...ratingAmps, help: "What the whole block may carry at its feed stud." }),
  },
  terminals: ({ ways }) => [
    tab({ name: "feed", x: 0, y: 0, exit: "left", about: "feed of the whole block" }),
    ...ways.map((_, at) =>
      tab({ name: `${at + 1}`, x: 6, y: 2 * at, exit: "right", about: `load side of way ${at + 1}` }),
    ),
  ],
  symbol: ({ ways }) => [
    outline(corners(1, -1.2, 5, 2 * ways.length - 1.2), "thin"),
    line([
      [0, 0],
      [1.6, 0],
      [1.6, 2 * ways.length - 2],
    ]),
    ...ways.flatMap((way, at) => waySymbol(2 * at, at, way)),
  ],
  bounds: ({ ways }) => box(0, -1.2, 6, 2 * ways.length - 1.2),
  model: ({ ways }) =>
    ways.map((way, at) => ({
      type: "protection",
      a: "feed",
      b: `${at + 1}`,
      ohm: fuseOhm(way.milliohm, way.ratingA),
      ratingA: way.ratingA,
      closed: way.fitted,
      recloses: false,
      terminal: `${at + 1}`,
      gates: "blade",
      holderA: null,
    })),
  facts: ({ ratedA }) => ({ ratedA }),
  rerate: ({ ways }, terminal, ratingA) => ({
    ways: ways.map((way, at) => (`${at + 1}` === terminal ? { ...way, ratingA } : way)),
  }),
  caption: ({ ratedA }) => (ratedA === null ? "" : amount(ratedA, "A")),
});

function waySymbol(y: number, at: number, way: { readonly ratingA: number | null; readonly fitted: boolean }) {
  return [
    dot(1.6, y, 0.12),
    line([
      [1.6, y],
      [2, y],
    ]),
    line([
      [4, y],
      [6, y],
    ]),
    ...fuseBody(2, 4, y, 0.4, way.fitted),
    letters(3, y - 0.8, way.fitted ? amount(way.ratingA, "A") : "empty", 0.5),
    letters(4.55, y - 0.45, `${at + 1}`),
  ];
}
