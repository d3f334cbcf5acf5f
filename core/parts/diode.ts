import { box, leads } from "./drawing.ts";
import { diodeBody } from "./glyphs.ts";
import { milliohms, ratingAmps } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { quantity, rating } from "./setting.ts";
import { lead } from "./terminal.ts";
import { amount } from "./wording.ts";

/** A diode: lets current through from A to K only. */
export const diode = definePart({
  kind: "diode",
  title: "Diode",
  words: ["rectifier", "blocking diode", "isolating diode", "steering diode"],
  shelf: "switching",
  letter: "d",
  about: "Lets current through one way only; keeps two triggers apart.",
  settings: {
    forwardV: quantity("Forward volts", "V", 0.7, {
      min: 0,
      max: 20,
      help: "What is lost across it while it conducts.",
    }),
    milliohm: quantity("Resistance", "mohm", 10, { ...milliohms, help: "What it adds to that with rising amps." }),
    ratedA: rating("Rating", "A", { ...ratingAmps, help: "Most amps it may carry." }),
  },
  terminals: () => [
    lead({ name: "A", x: 0, y: 0, exit: "left", about: "anode, current enters" }),
    lead({ name: "K", x: 4, y: 0, exit: "right", about: "cathode, the end with the stripe" }),
  ],
  symbol: () => [...leads(0, 1.5, 2.5, 4), ...diodeBody(1.5, 2.5, 0, 0.55)],
  bounds: () => box(0, -1, 4, 1),
  model: ({ forwardV, milliohm, ratedA }) => [
    { type: "diode", a: "A", k: "K", forwardV, ohm: milliohm / 1000, ratedA },
  ],
  caption: ({ ratedA }) => (ratedA === null ? "" : amount(ratedA, "A")),
});
