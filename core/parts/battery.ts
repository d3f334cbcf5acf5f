import { box, corners, dashed, letters, line, outline } from "./drawing.ts";
import { CHASSIS, type Element } from "./elements.ts";
import { frameMark } from "./glyphs.ts";
import { milliohms, volts } from "./limits.ts";
import { definePart } from "./part-kind.ts";
import { flag, numberOrNone, quantity, rating } from "./setting.ts";
import { coveredStud } from "./terminal.ts";
import { amount } from "./wording.ts";

/** A battery: EMF behind a resistance, with the vehicle's own strap from its negative to the frame. */
export const battery = definePart({
  kind: "battery",
  title: "Battery",
  words: ["accumulator", "house battery", "starter battery", "leisure battery", "cell", "power"],
  shelf: "sources",
  letter: "b",
  about: "A battery of the vehicle; everything is fed from it and comes back to it.",
  settings: {
    restV: quantity("Volts at rest", "V", 12.6, {
      ...volts,
      help: "Across the posts with the engine off and nothing on.",
    }),
    runningV: quantity("Volts while running", "V", 13.8, {
      ...volts,
      help: "Across the posts while the engine charges it.",
    }),
    internalMilliohm: quantity("Internal resistance", "mohm", 6, {
      ...milliohms,
      help: "How much the battery itself sags under load; an old or cold one has more.",
    }),
    capacityAh: rating("Capacity", "Ah", {
      min: 0.1,
      max: 10000,
      help: "Amp-hours on the label; needed to say how long a drain may last.",
    }),
    chassisBondMilliohm: numberOrNone("Strap to chassis", "mohm", {
      ...milliohms,
      help: "The vehicle's own cable from the negative post to its frame; none for a battery on another frame.",
      follows: "0 where the negative post is not wired straight to another battery's positive, else none",
    }),
    sensor: flag(
      "Battery sensor",
      false,
      "A sensor sits on the negative post; returns must go to the chassis, past it.",
    ),
  },
  terminals: () => [
    coveredStud({ name: "+", x: 0, y: 0, exit: "up", about: "positive post" }),
    coveredStud({ name: "-", x: 0, y: 4, exit: "down", about: "negative post" }),
  ],
  symbol: ({ chassisBondMilliohm, sensor }) => [
    line([
      [0, 0],
      [0, 1.2],
    ]),
    line([
      [-1.2, 1.2],
      [1.2, 1.2],
    ]),
    line(
      [
        [-0.6, 1.6],
        [0.6, 1.6],
      ],
      "thick",
    ),
    dashed([
      [0, 1.6],
      [0, 2.4],
    ]),
    line([
      [-1.2, 2.4],
      [1.2, 2.4],
    ]),
    line(
      [
        [-0.6, 2.8],
        [0.6, 2.8],
      ],
      "thick",
    ),
    line([
      [0, 2.8],
      [0, 4],
    ]),
    letters(-0.9, 0.55, "+", 0.8),
    letters(-0.9, 3.4, "−", 0.8),
    ...(chassisBondMilliohm === null ? [] : strap(chassisBondMilliohm === undefined)),
    ...(sensor ? [outline(corners(-0.3, 2.95, 0.3, 3.4)), letters(0.65, 3.15, "S", 0.5)] : []),
  ],
  bounds: () => box(-1.5, 0, 2, 4),
  model: (settings, { seriesUpper }) => {
    const source: Element = {
      type: "source",
      plus: "+",
      minus: "-",
      restV: settings.restV,
      runningV: settings.runningV,
      ohm: settings.internalMilliohm / 1000,
      when: null,
      zero: true,
    };
    const bond = settings.chassisBondMilliohm;
    if (bond === null || (bond === undefined && seriesUpper)) return [source];
    const given = bond !== undefined;
    return [source, { type: "link", a: "-", b: CHASSIS, ohm: (bond ?? 0) / 1000, bond: given ? "given" : "assumed" }];
  },
  facts: ({ capacityAh, sensor }) => ({ battery: { capacityAh, sensor } }),
  caption: ({ restV, capacityAh }) =>
    capacityAh === null ? amount(restV, "V") : `${amount(restV, "V")} ${amount(capacityAh, "Ah")}`,
});

function strap(assumed: boolean) {
  const run = [
    [0, 3.6],
    [1.3, 3.6],
  ] as const;
  return [assumed ? dashed(run) : line(run), ...frameMark(1.3, 3.6, 0.5)];
}
