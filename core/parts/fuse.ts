import { fuseMilliohm } from "../reference/index.ts";
import { box, leads } from "./drawing.ts";
import { fuseBody } from "./glyphs.ts";
import { milliohms, ratingAmps } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { choice, flag, rating } from "./setting.ts";
import { bareStud, tab } from "./terminal.ts";
import { amount } from "./wording.ts";

/**
 * Resistance of a fuse, ohms: the one given, else the usual one for its rating. With neither it solves as the 0.1 milliohm that
 * also stands for a wire nobody has measured, and the missing rating is reported.
 */
export function fuseOhm(milliohm: number | null, ratingA: number | null): number {
  return (milliohm ?? (ratingA === null ? 0.1 : fuseMilliohm(ratingA))) / 1000;
}

/** A fuse in a holder of its own. */
export const fuse = definePart({
  kind: "fuse",
  title: "Fuse",
  words: ["in-line fuse", "blade fuse", "fuse holder", "midi", "mega", "protection"],
  shelf: "protection",
  letter: "f",
  about: "A fuse in its own holder; it protects the wire after it.",
  settings: {
    ratingA: rating("Rating", "A", {
      ...ratingAmps,
      help: "Printed on the fuse; never more than the thinnest wire after it may carry.",
    }),
    body: choice(
      "Body",
      "blade",
      "The sort of fuse; it decides how fast it blows and whether its ends are open studs.",
      [
        { value: "blade", label: "Blade" },
        { value: "mini-blade", label: "Mini blade" },
        { value: "maxi-blade", label: "Maxi blade" },
        { value: "bolt", label: "Bolt-down" },
        { value: "glass", label: "Glass" },
      ],
    ),
    milliohm: rating("Resistance", "mohm", {
      ...milliohms,
      help: "Of the fuse itself, cold.",
      follows: "the usual resistance for its rating",
    }),
    holderA: rating("Holder rating", "A", {
      ...ratingAmps,
      help: "What the holder and its leads may carry; often less than the fuse that fits.",
    }),
    fitted: flag("Fitted", true, "Off: the fuse is pulled from its holder."),
  },
  terminals: ({ body }) => {
    const end = body === "bolt" ? bareStud : tab;
    return [
      end({ name: "1", x: 0, y: 0, exit: "left", about: "feed side" }),
      end({ name: "2", x: 4, y: 0, exit: "right", about: "load side" }),
    ];
  },
  symbol: ({ fitted }) => [...leads(0, 1, 3, 4), ...fuseBody(1, 3, 0, 0.45, fitted)],
  bounds: () => box(0, -0.5, 4, 0.5),
  model: ({ ratingA, body, milliohm, holderA, fitted }) => [
    {
      type: "protection",
      a: "1",
      b: "2",
      ohm: fuseOhm(milliohm, ratingA),
      ratingA,
      closed: fitted,
      recloses: false,
      terminal: "",
      // No operating-time table is published for the bolt-down sort.
      gates: body === "bolt" ? null : body,
      holderA,
    },
  ],
  rerate: (_settings, _terminal, ratingA) => ({ ratingA }),
  caption: ({ ratingA, fitted }) => (fitted ? amount(ratingA, "A") : `${amount(ratingA, "A")}, pulled`),
});
