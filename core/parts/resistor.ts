import { box, corners, leads, outline } from "./drawing.ts";
import { ohms } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { rating } from "./setting.ts";
import { lead } from "./terminal.ts";
import { plainUse } from "./use.ts";
import { amount } from "./wording.ts";

/** A plain resistance in the wiring. */
export const resistor = definePart({
  kind: "resistor",
  title: "Resistor",
  words: ["dropper", "ballast", "load resistor", "bulb-out resistor"],
  shelf: "loads",
  letter: "r",
  about: "A plain resistance: a dropper, or one that pleases a bulb monitor.",
  settings: {
    ohms: rating("Resistance", "ohm", { ...ohms, help: "Printed or coded on its body." }),
  },
  terminals: () => [
    lead({ name: "1", x: 0, y: 0, exit: "left", about: "one end" }),
    lead({ name: "2", x: 4, y: 0, exit: "right", about: "other end" }),
  ],
  symbol: () => [...leads(0, 1, 3, 4), outline(corners(1, -0.4, 3, 0.4))],
  bounds: () => box(0, -0.5, 4, 0.5),
  model: (settings, { nominalV }) => [
    {
      ...plainUse,
      a: "1",
      b: "2",
      draw: { law: "resistor", ohm: settings.ohms },
      role: "resistance",
      ratedV: nominalV,
      onWhen: { ampsFraction: 0.05 },
      statedA: null,
      noun: "resistor",
    },
  ],
  caption: (settings) => amount(settings.ohms, "Ω"),
});
