import { box, corners, leads, letters, outline } from "./drawing.ts";
import type { Draw } from "./elements.ts";
import { loadAmps, loadVolts, ohms, ratedVolts, seconds, watts } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { choice, flag, rating } from "./setting.ts";
import { lead } from "./terminal.ts";
import { plainUse, statedAmps } from "./use.ts";
import { amount } from "./wording.ts";

interface LoadSettings {
  readonly model: "resistor" | "constant-current" | "constant-power";
  readonly ohms: number | null;
  readonly watts: number | null;
  readonly amps: number | null;
}

const lettersOf = { resistor: "Ω", "constant-current": "A", "constant-power": "W" } as const;

/** Anything else that uses current: a heater, a radio, a fridge, an inverter. */
export const load = definePart({
  kind: "load",
  title: "Load",
  words: ["appliance", "heater", "fridge", "radio", "horn", "inverter", "charger", "accessory", "consumer"],
  shelf: "loads",
  letter: "r",
  about: "Any other thing that uses current: a heater, a radio, a fridge, an inverter.",
  settings: {
    model: choice("Behaves as", "resistor", "How its current follows the volts it gets.", [
      { value: "resistor", label: "Resistance (heater, horn)" },
      { value: "constant-current", label: "Same amps at any volts" },
      { value: "constant-power", label: "Same watts at any volts (electronics)" },
    ]),
    ohms: rating("Resistance", "ohm", { ...ohms, help: "Across its leads, for a resistance; or give its watts." }),
    watts: rating("Power", "W", { ...watts, help: "What it draws at its rated volts." }),
    amps: rating("Current", "A", {
      ...loadAmps,
      help: "What it draws, for one that takes the same amps at any volts.",
    }),
    ratedV: rating("Rated volts", "V", {
      ...ratedVolts,
      help: "Volts its watts are stated at.",
      follows: "the system's volts",
    }),
    minV: rating("Works from", "V", { ...loadVolts, help: "Least volts it works properly at." }),
    maxV: rating("Up to", "V", { ...loadVolts, help: "Most volts it stands." }),
    polarised: flag("Polarity matters", true, "Swapping its leads stops or harms it."),
    continuous: flag("Runs for long", true, "On for minutes or more; off for a horn or a winch."),
    startA: rating("Start current", "A", { ...loadAmps, help: "What it draws for a moment as it starts." }),
    startS: rating("Start time", "s", { ...seconds, help: "How long the start current lasts." }),
  },
  terminals: () => [
    lead({ name: "+", x: 0, y: 0, exit: "left", about: "feed" }),
    lead({ name: "-", x: 4, y: 0, exit: "right", about: "return" }),
  ],
  symbol: ({ model }, { on = false }) => [
    ...leads(0, 0.9, 3.1, 4),
    outline(corners(0.9, -0.8, 3.1, 0.8), on ? "thick" : "normal"),
    letters(2, 0, lettersOf[model], 0.9),
  ],
  bounds: () => box(0, -1, 4, 1),
  model: (settings, { nominalV }) => {
    const ratedV = settings.ratedV ?? nominalV;
    const { startA, startS, minV, maxV, polarised, continuous } = settings;
    return [
      {
        ...plainUse,
        draw: drawOf(settings, ratedV),
        ratedV,
        minV,
        maxV,
        polarised,
        conductsReversed: settings.model === "resistor" || !polarised,
        continuous,
        onWhen: { ampsFraction: 0.05 },
        statedA: statedOf(settings, ratedV),
        start: startA === null ? null : { ohm: null, amps: startA, seconds: startS },
        noun: "load",
      },
    ];
  },
  caption: (settings) => captionOf(settings),
});

function drawOf({ model, ohms, watts, amps }: LoadSettings, ratedV: number): Draw {
  if (model === "constant-current") return { law: "current", amps };
  if (model === "constant-power") return { law: "power", watts, opens: null };
  return { law: "resistor", ohm: ohms ?? (watts === null ? null : ratedV ** 2 / watts) };
}

function statedOf({ model, ohms, watts, amps }: LoadSettings, ratedV: number): number | null {
  if (model === "constant-current") return amps;
  if (model === "resistor" && ohms !== null) return ratedV / ohms;
  return statedAmps(watts, ratedV);
}

function captionOf({ model, ohms, watts, amps }: LoadSettings): string {
  if (model === "constant-current") return amount(amps, "A");
  return model === "resistor" && ohms !== null ? amount(ohms, "Ω") : amount(watts, "W");
}
