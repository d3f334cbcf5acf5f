import { box, corners, letters, line, outline } from "./drawing.ts";
import { ratedVolts, ratingAmps } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { quantity, rating } from "./setting.ts";
import { lead } from "./terminal.ts";
import { amount } from "./wording.ts";

/** A converter: constant power at its input, a source of fixed volts at its isolated output. */
export const converter = definePart({
  kind: "converter",
  title: "Converter",
  words: ["dc-dc", "voltage converter", "dropper", "24 to 12", "charger", "inverter", "regulator"],
  shelf: "sources",
  letter: "u",
  about: "Makes other volts, such as 12 V on a 24 V truck; its two sides are apart.",
  settings: {
    outV: quantity("Output volts", "V", 12, { ...ratedVolts, help: "What it gives out." }),
    maxA: rating("Output limit", "A", { ...ratingAmps, help: "Most amps it gives out; it limits itself there." }),
    efficiency: quantity("Efficiency", "", 0.85, {
      min: 0.01,
      max: 1,
      help: "Part of the watts it takes that it gives out; 1 wastes nothing.",
    }),
  },
  terminals: () => [
    lead({ name: "in+", x: 0, y: 0, exit: "left", about: "input, positive" }),
    lead({ name: "in-", x: 0, y: 2, exit: "left", about: "input, negative" }),
    lead({ name: "out+", x: 6, y: 0, exit: "right", about: "output, positive" }),
    lead({ name: "out-", x: 6, y: 2, exit: "right", about: "output, negative" }),
  ],
  symbol: ({ outV }) => [
    outline(corners(1, -1, 5, 3)),
    line(
      [
        [2.4, 1.5],
        [3.6, 0.5],
      ],
      "thin",
    ),
    ...[0, 2].flatMap((y) => [
      line([
        [0, y],
        [1, y],
      ]),
      line([
        [5, y],
        [6, y],
      ]),
    ]),
    letters(1.3, 0, "in+", 0.5, "start"),
    letters(1.3, 2, "in−", 0.5, "start"),
    letters(4.7, 0, "out+", 0.5, "end"),
    letters(4.7, 2, "out−", 0.5, "end"),
    letters(3, 2.6, amount(outV, "V")),
  ],
  bounds: () => box(0, -1, 6, 3),
  model: ({ outV, maxA, efficiency }) => [
    {
      type: "converter",
      inPlus: "in+",
      inMinus: "in-",
      outPlus: "out+",
      outMinus: "out-",
      outV,
      maxA,
      efficiency,
    },
  ],
  caption: ({ maxA }) => (maxA === null ? "" : amount(maxA, "A")),
});
