import type { Stroke } from "../geometry/index.ts";
import { box, leads, line, ring } from "./drawing.ts";
import { arrowHead, diodeBody, rays } from "./glyphs.ts";
import { loadVolts, ratedVolts, watts } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { choice, flag, rating } from "./setting.ts";
import { lead } from "./terminal.ts";
import { plainUse, statedAmps } from "./use.ts";
import { amount } from "./wording.ts";

/** Volts a filament lamp's watts are stated at when its label does not say. */
const filamentRatedV = 12.8;

/** A lamp: LED (constant power, open outside its volts and when reversed) or filament (either polarity). */
export const lamp = definePart({
  kind: "lamp",
  title: "Lamp",
  words: ["light", "work light", "bulb", "led", "beacon", "light bar", "reverse lamp", "marker"],
  shelf: "loads",
  letter: "e",
  about: "An LED or filament lamp.",
  settings: {
    type: choice("Type", "led", "LED lamps draw more amps as volts fall; filament lamps draw less.", [
      { value: "led", label: "LED" },
      { value: "filament", label: "Filament" },
    ]),
    watts: rating("Power", "W", { ...watts, help: "What it draws, from its label; not what it claims to shine like." }),
    ratedV: rating("Rated volts", "V", {
      ...ratedVolts,
      help: "Volts its watts are stated at.",
      follows: "12.8 for a filament lamp, else the system's volts",
    }),
    minV: rating("Works from", "V", {
      ...loadVolts,
      help: "Least volts it works at; an LED lamp goes out below.",
      follows: "half its rated volts for an LED lamp, else none",
    }),
    maxV: rating("Up to", "V", { ...loadVolts, help: "Most volts it stands; an LED lamp's driver shuts off above." }),
    mustBeOffAtRest: flag("Off at rest", true, "It is meant to be dark with everything switched off."),
  },
  terminals: () => [
    lead({ name: "+", x: 0, y: 0, exit: "left", about: "feed" }),
    lead({ name: "-", x: 4, y: 0, exit: "right", about: "return" }),
  ],
  symbol: ({ type }, { on = false }) => [
    ...leads(0, 1.1, 2.9, 4),
    ring(2, 0, 0.9),
    ...(type === "led" ? ledInside() : crossInside()),
    ...(on ? rays(2, 0, type === "led" ? [60, 120, 160, 200, 240] : [30, 60, 120, 150, 210, 240, 300, 330]) : []),
  ],
  bounds: () => box(0, -1.5, 4, 1.5),
  model: ({ type, watts, ratedV, minV, maxV, mustBeOffAtRest }, { nominalV }) => {
    const led = type === "led";
    const statedV = ratedV ?? (led ? nominalV : filamentRatedV);
    return [
      {
        ...plainUse,
        draw: led
          ? { law: "power", watts, opens: { minV: minV ?? statedV / 2, maxV } }
          : { law: "filament", watts, ratedV: statedV },
        ratedV: statedV,
        minV,
        maxV,
        polarised: led,
        conductsReversed: !led,
        mustBeOffAtRest,
        onWhen: led ? { drawing: true } : { voltsFraction: 0.25 },
        statedA: statedAmps(watts, statedV),
        noun: "lamp",
      },
    ];
  },
  caption: ({ watts }) => amount(watts, "W"),
});

function crossInside(): Stroke[] {
  const reach = 0.9 * Math.SQRT1_2;
  return [
    line([
      [2 - reach, -reach],
      [2 + reach, reach],
    ]),
    line([
      [2 - reach, reach],
      [2 + reach, -reach],
    ]),
  ];
}

function ledInside(): Stroke[] {
  return [
    line([
      [1.1, 0],
      [1.7, 0],
    ]),
    line([
      [2.3, 0],
      [2.9, 0],
    ]),
    ...diodeBody(1.7, 2.3, 0, 0.4),
    ...lightArrow(2.55, -0.95),
    ...lightArrow(2.9, -0.6),
  ];
}

function lightArrow(x: number, y: number): Stroke[] {
  return [
    line([
      [x, y],
      [x + 0.35, y - 0.35],
    ]),
    ...arrowHead(x + 0.55, y - 0.55, 315, 0.32),
  ];
}
