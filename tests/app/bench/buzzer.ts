import type { BenchSymbol } from "../../../app/bench/symbol.ts";

/** Two terminals, a fuse of 2 A from the first one, and a load of 6 W after it. */
export const buzzer: BenchSymbol = {
  name: "Buzzer",
  words: "horn beeper",
  letter: "y",
  terminals: [
    { name: "1", at: [0, 0], exit: "left" },
    { name: "2", at: [6, 0], exit: "right" },
  ],
  drawing: [
    {
      shape: "line",
      points: [
        [1, -2],
        [5, -2],
        [5, 2],
        [1, 2],
      ],
      closed: true,
    },
  ],
  elements: [
    { type: "protection", a: "1", b: "$a", ratingA: 2 },
    { type: "load", a: "$a", b: "2", watts: 6 },
  ],
  positions: [],
  momentary: false,
};
