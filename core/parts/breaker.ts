import type { Stroke } from "../geometry/index.ts";
import { box, dot, leads, line, ring } from "./drawing.ts";
import { arrowHead } from "./glyphs.ts";
import { milliohms, ratingAmps } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { choice, flag, quantity, rating } from "./setting.ts";
import { bareStud } from "./terminal.ts";
import { amount } from "./wording.ts";

/** A circuit breaker on open studs. */
export const breaker = definePart({
  kind: "breaker",
  title: "Circuit breaker",
  words: ["breaker", "cutout", "self-resetting fuse", "thermal breaker", "protection"],
  shelf: "protection",
  letter: "q",
  about: "A breaker that trips instead of blowing; some close again by themselves.",
  settings: {
    ratingA: rating("Rating", "A", {
      ...ratingAmps,
      help: "Printed on the breaker; never more than the thinnest wire after it may carry.",
    }),
    reset: choice("Reset", "auto", "What brings it back after it tripped.", [
      { value: "auto", label: "By itself as it cools" },
      { value: "held", label: "Stays open until power is off" },
      { value: "manual", label: "By hand" },
    ]),
    milliohm: quantity("Resistance", "mohm", 4, { ...milliohms, help: "From stud to stud while closed." }),
    closed: flag("Closed", true, "Off: tripped or switched off by hand."),
  },
  terminals: () => [
    bareStud({ name: "1", x: 0, y: 0, exit: "left", about: "feed stud" }),
    bareStud({ name: "2", x: 4, y: 0, exit: "right", about: "load stud" }),
  ],
  symbol: ({ reset, closed }) => [
    ...leads(0, 0.82, 3.18, 4),
    ring(1, 0, 0.18),
    ring(3, 0, 0.18),
    { shape: "arc", centre: [2, closed ? 0 : -0.5], radius: 0.85, start: 180, end: 360, weight: "thick" },
    ...resetMark(reset),
  ],
  bounds: () => box(0, -1.5, 4, 1),
  model: ({ ratingA, reset, milliohm, closed }) => [
    {
      type: "protection",
      a: "1",
      b: "2",
      ohm: milliohm / 1000,
      ratingA,
      closed,
      recloses: true,
      terminal: "",
      gates: null,
      holderA: null,
      autoReset: reset === "auto",
    },
  ],
  rerate: (_settings, _terminal, ratingA) => ({ ratingA }),
  caption: ({ ratingA, closed }) => (closed ? amount(ratingA, "A") : `${amount(ratingA, "A")}, open`),
});

function resetMark(reset: "auto" | "held" | "manual"): Stroke[] {
  if (reset === "manual")
    return [
      line([
        [2, -0.85],
        [2, -1.35],
      ]),
      line([
        [1.6, -1.4],
        [2.4, -1.4],
      ]),
    ];
  if (reset === "held") return [dot(2, -0.3, 0.15)];
  return [
    { shape: "arc", centre: [2, -0.3], radius: 0.32, start: 290, end: 200, weight: "normal" },
    ...arrowHead(1.7, -0.42, 250, 0.3),
  ];
}
