import { relaySymbol } from "./relay-symbol.ts";
import { box } from "./drawing.ts";
import type { Element } from "./elements.ts";
import { loadVolts, milliohms, ohms, ratingAmps } from "./limits.ts";
import { definePart, type Terminal } from "./part-kind.ts";
import { choice, quantity, rating } from "./setting.ts";
import { tab } from "./terminal.ts";
import { amount } from "./wording.ts";

type ContactSort = "make" | "changeover" | "twin-make";

const coilPins: readonly Terminal[] = [
  tab({ name: "30", x: 0, y: 1, exit: "left", about: "feed of the contact" }),
  tab({ name: "85", x: 6, y: 5, exit: "right", about: "coil, ground side" }),
  tab({ name: "86", x: 0, y: 5, exit: "left", about: "coil, trigger side" }),
  tab({ name: "87", x: 6, y: 2, exit: "right", about: "contact, live when pulled in" }),
];
const extraPin: Readonly<Record<ContactSort, readonly Terminal[]>> = {
  make: [],
  changeover: [tab({ name: "87a", x: 6, y: 0, exit: "right", about: "contact, joined to 30 at rest" })],
  "twin-make": [tab({ name: "87b", x: 6, y: 0, exit: "right", about: "second contact, live when pulled in" })],
};

/** A relay with one coil; its contacts by pin numbers as marked on the body. */
export const relay = definePart({
  kind: "relay",
  title: "Relay",
  words: ["4-pin relay", "5-pin relay", "changeover relay", "contactor", "solenoid switch", "87a"],
  shelf: "switching",
  letter: "k",
  about: "A small current through its coil switches a large one through its contacts.",
  settings: {
    contact: choice("Contacts", "make", "Read the little drawing on the relay: not every fifth pin is 87a.", [
      { value: "make", label: "One make contact (4 pins)" },
      { value: "changeover", label: "Changeover, 87a live at rest" },
      { value: "twin-make", label: "Two make contacts, 87 and 87b" },
    ]),
    coilOhm: quantity("Coil resistance", "ohm", 90, {
      ...ohms,
      help: "Between 85 and 86 with a meter, relay out of its socket.",
    }),
    pullInV: quantity("Pulls in at", "V", 7.5, {
      min: 0.1,
      max: 500,
      help: "Coil volts from which it surely switches.",
    }),
    dropOutV: quantity("Drops out below", "V", 1.5, {
      ...loadVolts,
      help: "Coil volts below which it surely lets go.",
    }),
    coilMaxV: rating("Coil maximum", "V", {
      min: 0.1,
      max: 1000,
      help: "Most volts the coil stands for long.",
      follows: "2.1 times the pull-in volts",
    }),
    milliohm: quantity("Contact resistance", "mohm", 5, { ...milliohms, help: "Of each closed contact." }),
    makeRatedA: quantity("Rating of 87", "A", 30, {
      ...ratingAmps,
      help: "Of the contacts that close when it pulls in, at their working heat.",
    }),
    breakRatedA: quantity("Rating of 87a", "A", 20, {
      ...ratingAmps,
      help: "Of the contact that is closed at rest; less than that of 87.",
    }),
    suppression: choice(
      "Coil suppression",
      "none",
      "What tames the spike when the coil lets go; marked on the relay.",
      [
        { value: "none", label: "None" },
        { value: "resistor", label: "Resistor" },
        { value: "diode", label: "Diode, cathode at 86" },
      ],
    ),
  },
  fresh: (nominalV) => (nominalV === 24 ? { coilOhm: 255, pullInV: 16, dropOutV: 3 } : {}),
  terminals: ({ contact }) => [...coilPins, ...extraPin[contact]],
  symbol: ({ contact, suppression }, { pulledIn = false }) => relaySymbol(contact, suppression, pulledIn),
  bounds: ({ suppression }) => box(0, -1, 6, suppression === "none" ? 6 : 7),
  model: (settings) => [
    {
      type: "coil",
      name: "coil",
      a: "85",
      b: "86",
      ohm: settings.coilOhm,
      pullInV: settings.pullInV,
      dropOutV: settings.dropOutV,
      maxV: settings.coilMaxV ?? 2.1 * settings.pullInV,
      suppression: settings.suppression,
    },
    ...suppressor(settings.suppression),
    contactTo("87", "pulled-in", settings.milliohm, settings.makeRatedA),
    ...(settings.contact === "changeover"
      ? [contactTo("87a", "released", settings.milliohm, settings.breakRatedA)]
      : []),
    ...(settings.contact === "twin-make"
      ? [contactTo("87b", "pulled-in", settings.milliohm, settings.makeRatedA)]
      : []),
  ],
  rerate: (_settings, terminal, ratingA) => (terminal === "87a" ? { breakRatedA: ratingA } : { makeRatedA: ratingA }),
  caption: ({ makeRatedA }) => amount(makeRatedA, "A"),
});

function contactTo(pin: string, closedWhen: "pulled-in" | "released", milliohm: number, ratedA: number): Element {
  return { type: "contact", a: "30", b: pin, ohm: milliohm / 1000, movedBy: { coil: "coil", closedWhen }, ratedA };
}

function suppressor(suppression: "none" | "resistor" | "diode"): readonly Element[] {
  if (suppression === "none") return [];
  if (suppression === "diode") {
    return [{ type: "diode", a: "85", k: "86", forwardV: 0.7, ohm: 0.01, ratedA: null, suppresses: "coil" }];
  }
  return [
    {
      type: "load",
      a: "86",
      b: "85",
      draw: { law: "resistor", ohm: 680 },
      role: "resistance",
      ratedV: 12,
      minV: null,
      maxV: null,
      polarised: false,
      conductsReversed: true,
      continuous: true,
      mustBeOffAtRest: false,
      onWhen: { ampsFraction: 0.05 },
      statedA: null,
      start: null,
      noun: "resistor",
    },
  ];
}
