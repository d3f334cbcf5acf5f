import { contactSettings } from "./contact-settings.ts";
import { box, letters, line, ring } from "./drawing.ts";
import { blade } from "./glyphs.ts";
import { definePart } from "./part-kind.ts";
import { tab } from "./terminal.ts";
import { amount } from "./wording.ts";

const tipY = new Map([
  ["1", -0.9],
  ["2", 0.9],
]);

/** A centre-off switch that joins its common to one of two circuits. */
export const changeoverSwitch = definePart({
  kind: "changeover-switch",
  title: "Changeover switch",
  words: ["two-way switch", "centre off", "center off", "on-off-on", "selector", "rocker", "toggle"],
  shelf: "switching",
  letter: "s",
  about: "Joins its common to one of two circuits, with off in the middle.",
  settings: contactSettings(),
  terminals: () => [
    tab({ name: "common", x: 0, y: 0, exit: "left", about: "common" }),
    tab({ name: "1", x: 4, y: -1, exit: "right", about: "joined to common in position 1" }),
    tab({ name: "2", x: 4, y: 1, exit: "right", about: "joined to common in position 2" }),
  ],
  symbol: (_, { position }) => [
    line([
      [0, 0],
      [1, 0],
    ]),
    line([
      [3, -1],
      [4, -1],
    ]),
    line([
      [3, 1],
      [4, 1],
    ]),
    ring(3, -1, 0.12),
    ring(3, 1, 0.12),
    ...blade(1, 0, 3, tipY.get(position ?? "off") ?? 0),
    letters(3.5, -1.5, "1"),
    letters(3.5, 1.55, "2"),
  ],
  bounds: () => box(0, -2, 4, 2),
  control: ({ momentary }) => ({ positions: ["off", "1", "2"], momentary, noun: "switch" }),
  model: ({ milliohm, ratedA }) =>
    ["1", "2"].map((side) => ({
      type: "contact",
      a: "common",
      b: side,
      ohm: milliohm / 1000,
      movedBy: { positions: [side] },
      ratedA,
    })),
  facts: ({ ratedA }) => ({ ratedA }),
  rerate: (_settings, _terminal, ratingA) => ({ ratedA: ratingA }),
  caption: ({ ratedA }) => (ratedA === null ? "" : amount(ratedA, "A")),
});
