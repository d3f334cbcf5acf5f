import type { Stroke } from "../geometry/index.ts";
import { contactSettings } from "./contact-settings.ts";
import { box, corners, letters, line, outline, ring } from "./drawing.ts";
import { blade } from "./glyphs.ts";
import { definePart } from "./part-kind.ts";
import { tab } from "./terminal.ts";
import { amount } from "./wording.ts";

/** The contacts of the key, and the positions each is closed in. */
const contacts = [
  { pin: "75", y: 0, positions: ["accessory", "on"] },
  { pin: "15", y: 2, positions: ["on", "start"] },
  { pin: "50", y: 4, positions: ["start"] },
];

const shown = new Map([
  ["accessory", "ACC"],
  ["on", "ON"],
  ["start", "START"],
]);

/** An ignition key switch: 30 in; 75 accessories, 15 ignition, 50 starter out. */
export const keySwitch = definePart({
  kind: "key-switch",
  title: "Key switch",
  words: ["ignition switch", "ignition", "starter switch", "key"],
  shelf: "switching",
  letter: "s",
  about: "The key: off, accessory, on and start.",
  settings: contactSettings(),
  terminals: () => [
    tab({ name: "30", x: 0, y: 2, exit: "left", about: "feed from the battery" }),
    tab({ name: "75", x: 6, y: 0, exit: "right", about: "accessories: live in accessory and on" }),
    tab({ name: "15", x: 6, y: 2, exit: "right", about: "ignition: live in on and start" }),
    tab({ name: "50", x: 6, y: 4, exit: "right", about: "starter: live in start" }),
  ],
  symbol: (_, { position = "off" }) => [
    outline(corners(1, -1, 5, 6), "thin"),
    line([
      [0, 2],
      [2.2, 2],
    ]),
    line([
      [2.2, 0],
      [2.2, 4],
    ]),
    letters(1.55, 1.5, "30"),
    ...contacts.flatMap((contact) => contactSymbol(contact, position)),
    ...key(1.65, 5.25),
    letters(3.85, 5.25, shown.get(position) ?? "OFF"),
  ],
  bounds: () => box(0, -1, 6, 6),
  control: ({ momentary }) => ({ positions: ["off", "accessory", "on", "start"], momentary, noun: "key" }),
  model: ({ milliohm, ratedA }) =>
    contacts.map(({ pin, positions }) => ({
      type: "contact",
      a: "30",
      b: pin,
      ohm: milliohm / 1000,
      movedBy: { positions },
      ratedA,
    })),
  facts: ({ ratedA }) => ({ ratedA }),
  rerate: (_settings, _terminal, ratingA) => ({ ratedA: ratingA }),
  caption: ({ ratedA }) => (ratedA === null ? "" : amount(ratedA, "A")),
});

function contactSymbol({ pin, y, positions }: (typeof contacts)[number], position: string): Stroke[] {
  const closed = positions.includes(position);
  return [
    line([
      [3.7, y],
      [6, y],
    ]),
    ring(3.7, y, 0.12),
    ...blade(2.2, y, 3.6, closed ? y - 0.1 : y - 0.7),
    letters(4.45, y - 0.5, pin),
  ];
}

function key(x: number, y: number): Stroke[] {
  return [
    ring(x - 0.2, y, 0.25),
    line([
      [x + 0.05, y],
      [x + 0.95, y],
      [x + 0.95, y + 0.25],
    ]),
    line([
      [x + 0.65, y],
      [x + 0.65, y + 0.2],
    ]),
  ];
}
