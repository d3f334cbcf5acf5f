import type { Stroke } from "../geometry/index.ts";
import { contactSettings } from "./contact-settings.ts";
import { box, leads, line, ring } from "./drawing.ts";
import { blade } from "./glyphs.ts";
import { definePart } from "./part-kind.ts";
import { tab } from "./terminal.ts";
import { amount } from "./wording.ts";

/** A switch with one contact, or a push button. */
export const onOffSwitch = definePart({
  kind: "switch",
  title: "Switch",
  words: [
    "push button",
    "rocker",
    "toggle",
    "battery isolator",
    "isolator",
    "disconnect",
    "horn button",
    "master switch",
  ],
  shelf: "switching",
  letter: "s",
  about: "Opens and closes one circuit by hand: a rocker, a push button, a battery isolator.",
  settings: contactSettings(),
  terminals: () => [
    tab({ name: "1", x: 0, y: 0, exit: "left", about: "one side of the contact" }),
    tab({ name: "2", x: 4, y: 0, exit: "right", about: "other side of the contact" }),
  ],
  symbol: ({ momentary }, { position }) => {
    const closed = position === "on";
    return [
      ...leads(0, 1, 3, 4),
      ring(3, 0, 0.12),
      ...blade(1, 0, 3, closed ? -0.12 : -1),
      ...(momentary ? button(closed) : []),
    ];
  },
  bounds: () => box(0, -1.5, 4, 0.5),
  control: ({ momentary }) => ({ positions: ["off", "on"], momentary, noun: momentary ? "button" : "switch" }),
  model: ({ milliohm, ratedA }) => [
    { type: "contact", a: "1", b: "2", ohm: milliohm / 1000, movedBy: { positions: ["on"] }, ratedA },
  ],
  facts: ({ ratedA }) => ({ ratedA }),
  rerate: (_settings, _terminal, ratingA) => ({ ratedA: ratingA }),
  caption: ({ ratedA }) => (ratedA === null ? "" : amount(ratedA, "A")),
});

function button(pressed: boolean): Stroke[] {
  const top = pressed ? -0.9 : -1.4;
  return [
    line([
      [1.5, top],
      [2.5, top],
    ]),
    {
      shape: "line",
      points: [
        [2, top],
        [2, pressed ? -0.1 : -0.5],
      ],
      dash: true,
      weight: "thin",
    },
  ];
}
