import { box, letters, line, outline, solid } from "./drawing.ts";
import { CHASSIS, type Element } from "./elements.ts";
import { milliohms, ohms, ratingAmps, spareAmps, volts } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { choice, flag, quantity, rating } from "./setting.ts";
import { lead } from "./terminal.ts";

const answers = [
  { value: "yes", label: "Yes" },
  { value: "no", label: "No" },
  { value: "unknown", label: "Not known" },
] as const;

/** A wire the vehicle already has, tapped for power or as a trigger. */
export const factoryFeed = definePart({
  kind: "factory-feed",
  title: "Factory feed",
  words: ["vehicle wire", "trigger", "reverse lamp wire", "ignition feed", "tap", "upfitter output", "signal"],
  shelf: "sources",
  letter: "v",
  about: "A wire of the vehicle that we tap: its reverse lamp, ignition or accessory feed.",
  settings: {
    restV: quantity("Volts at rest", "V", 12.6, { ...volts, help: "On the wire while it is on, engine off." }),
    runningV: quantity("Volts while running", "V", 13.8, {
      ...volts,
      help: "On the wire while it is on, engine running.",
    }),
    sourceMilliohm: quantity("Source resistance", "mohm", 20, {
      ...milliohms,
      help: "The vehicle's own wiring up to this point.",
    }),
    fuseA: rating("Vehicle's fuse", "A", {
      ...ratingAmps,
      help: "The vehicle's own fuse ahead of this wire; look in its fuse chart.",
    }),
    spareA: rating("Allowed extra", "A", { ...spareAmps, help: "What the vehicle's maker lets you add to this wire." }),
    existingOhm: rating("What it feeds now", "ohm", {
      ...ohms,
      help: "Resistance to chassis of what the vehicle already has on this wire, such as its own lamps.",
    }),
    monitored: choice(
      "Watched by a module",
      "unknown",
      "The vehicle checks this wire for failed bulbs and may lock it off.",
      answers,
    ),
    pulsed: choice(
      "Pulsed",
      "unknown",
      "The vehicle switches this wire on and off fast to dim it; a relay may buzz.",
      answers,
    ),
    always: flag("Always on", false, "It has no off: straight from the vehicle's battery."),
    measured: flag(
      "Measured",
      true,
      "Off: nobody has proved this wire with a meter yet; it goes on the measure-first list.",
    ),
  },
  fresh: (nominalV) => ({ measured: false, ...(nominalV === 24 ? { restV: 25.2, runningV: 27.6 } : {}) }),
  terminals: () => [
    {
      ...lead({ name: "out", x: 4, y: 0, exit: "right", about: "the vehicle's wire" }),
      cover: { wired: "covered", unwired: "covered" },
    },
  ],
  symbol: ({ always }, { position }) => [
    outline([
      [0, -0.8],
      [2.6, -0.8],
      [3.2, 0],
      [2.6, 0.8],
      [0, 0.8],
    ]),
    letters(1.4, 0, "VEHICLE", 0.5),
    line([
      [3.2, 0],
      [4, 0],
    ]),
    ...(always || position === "on"
      ? [
          solid([
            [2.6, -0.8],
            [3.2, 0],
            [2.6, 0.8],
          ]),
        ]
      : []),
  ],
  bounds: () => box(0, -1, 4, 1),
  control: ({ always }) => (always ? null : { positions: ["off", "on"], momentary: false, noun: "vehicle signal" }),
  model: (settings) => [
    {
      type: "source",
      plus: "out",
      minus: CHASSIS,
      restV: settings.restV,
      runningV: settings.runningV,
      ohm: settings.sourceMilliohm / 1000,
      when: settings.always ? null : ["on"],
      fuseA: settings.fuseA,
      zero: false,
    },
    ...(settings.existingOhm === null ? [] : [existing(settings.existingOhm, settings.restV)]),
  ],
  facts: ({ monitored, pulsed, spareA, measured }) => ({ feed: { monitored, pulsed, spareA, measured } }),
  caption: ({ fuseA }) => (fuseA === null ? "" : `fuse ${fuseA} A`),
});

function existing(ohm: number, ratedV: number): Element {
  return {
    type: "load",
    a: "out",
    b: CHASSIS,
    draw: { law: "resistor", ohm },
    role: "existing",
    ratedV,
    minV: null,
    maxV: null,
    polarised: false,
    conductsReversed: true,
    continuous: true,
    mustBeOffAtRest: false,
    onWhen: { ampsFraction: 0.05 },
    statedA: ratedV / ohm,
    start: null,
    noun: "load",
  };
}
