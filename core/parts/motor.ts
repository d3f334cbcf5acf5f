import { box, corners, leads, letters, ring, solid } from "./drawing.ts";
import { turning } from "./glyphs.ts";
import { loadVolts, ratedVolts, seconds, watts } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { rating } from "./setting.ts";
import { lead } from "./terminal.ts";
import { plainUse, statedAmps } from "./use.ts";
import { amount } from "./wording.ts";

/** A motor: constant power while it runs, a plain resistance as it starts; it draws either way round. */
export const motor = definePart({
  kind: "motor",
  title: "Motor",
  words: ["pump", "fan", "winch", "blower", "compressor", "wiper", "actuator"],
  shelf: "loads",
  letter: "m",
  about: "A pump, fan, winch or anything that turns; it draws most as it starts.",
  settings: {
    watts: rating("Running power", "W", { ...watts, help: "What it draws when it runs at its working load." }),
    ratedV: rating("Rated volts", "V", {
      ...ratedVolts,
      help: "Volts its watts are stated at.",
      follows: "the system's volts",
    }),
    minV: rating("Works from", "V", { ...loadVolts, help: "Least volts it starts and runs at." }),
    startOhm: rating("Standstill resistance", "ohm", {
      min: 0.0001,
      max: 10000,
      help: "Rated volts divided by its stall or start amps; decides what it draws as it starts.",
    }),
    startS: rating("Start time", "s", { ...seconds, help: "How long it takes to come up to speed." }),
  },
  terminals: () => [
    lead({ name: "+", x: 0, y: 0, exit: "left", about: "feed" }),
    lead({ name: "-", x: 4, y: 0, exit: "right", about: "return" }),
  ],
  symbol: (_, { on = false }) => [
    ...leads(0, 0.9, 3.1, 4),
    solid(corners(0.9, -0.3, 1.1, 0.3)),
    solid(corners(2.9, -0.3, 3.1, 0.3)),
    ring(2, 0, 0.9),
    letters(2, 0, "M", 1),
    ...(on ? turning(2, 0, 1.2) : []),
  ],
  bounds: () => box(0, -1.5, 4, 1.5),
  model: (settings, { nominalV }) => {
    const ratedV = settings.ratedV ?? nominalV;
    return [
      {
        ...plainUse,
        draw: { law: "power", watts: settings.watts, opens: null },
        ratedV,
        minV: settings.minV,
        onWhen: { ampsFraction: 0.05 },
        statedA: statedAmps(settings.watts, ratedV),
        start: { ohm: settings.startOhm, amps: null, seconds: settings.startS },
        noun: "motor",
      },
    ];
  },
  caption: (settings) => amount(settings.watts, "W"),
});
