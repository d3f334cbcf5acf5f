import type { Quantity } from "./quantity.ts";
import { currentLoad, filamentLoad, loop, powerLoad, resistorLoad } from "./two-pole.ts";

/** Watts, volts, amps as printed: krnet list (12 W, 100 W), lamp pages, infinispark.com.au, forconstructionpros.com. */
const LAMPS = [
  [12, 12, 1],
  [100, 13.5, 7.4],
  [21, 12, 1.75],
  [3, 12, 0.25],
  [25, 24, 1.04],
  [25, 42, 0.595],
  [60, 12.6, 4.76],
  [20, 12.6, 1.58],
  [60, 12, 5],
] as const;

/** Volts, ohms, milliamps: relay forum examples (90 ohm coil; the same at its lower tolerance). */
const COIL_CURRENT = [
  [12, 90, 133],
  [12.6, 81, 156],
] as const;

/** Volts, ohms, watts stated on relay makers' data sheets (the two rows whose sheets contradict themselves are left out). */
const COIL_POWER = [
  [12, 85, 1.7],
  [12, 75, 1.9],
  [24, 255, 2.3],
  [12, 90, 1.6],
  [12, 100, 1.44],
  [12, 300, 0.48],
  [12, 109, 1.3],
] as const;

/** 12 V behind 10 milliohm into 30 milliohm: Masters, textbook problem on a battery's internal resistance. */
const battery = loop(12, 0, resistorLoad(0.03), 0.01);

export const loadQuantities: readonly Quantity[] = [
  {
    quantity: "current of a load of given watts",
    unit: "A",
    limit: 0.01,
    because: "printed to 0.01 A, some cut off instead of rounded",
    source: "published lamp and load examples",
    checks: LAMPS.map(([watts, volts, expected]) => ({
      of: `${watts} W at ${volts} V`,
      expected,
      got: loop(volts, 0, powerLoad(watts)).amps,
    })),
  },
  {
    quantity: "current of a relay coil",
    unit: "mA",
    limit: 1,
    because: "printed to whole milliamperes",
    source: "published relay examples",
    checks: COIL_CURRENT.map(([volts, ohm, expected]) => ({
      of: `${ohm} ohm at ${volts} V`,
      expected,
      got: loop(volts, 0, resistorLoad(ohm)).amps * 1000,
    })),
  },
  {
    quantity: "watts of a relay coil",
    unit: "%",
    limit: 6,
    because: "stated to two digits, coils vary by 10 %",
    source: "relay makers' data sheets",
    checks: COIL_POWER.map(([volts, ohm, expected]) => ({
      of: `${ohm} ohm at ${volts} V`,
      expected,
      got: loop(volts, 0, resistorLoad(ohm)).loadW,
    })),
  },
  {
    quantity: "filament lamp current against volts",
    unit: "ratio",
    limit: 0.0001,
    because: "the law itself, printed to four digits",
    source: "Fink and Beaty, Standard Handbook for Electrical Engineers, p. 22-8, as quoted",
    checks: [
      {
        of: "14.4 V against 13.2 V",
        expected: 1.049,
        got: loop(14.4, 0, filamentLoad(55, 12.8)).amps / loop(13.2, 0, filamentLoad(55, 12.8)).amps,
      },
    ],
  },
  {
    quantity: "battery with internal resistance",
    unit: "%",
    limit: 1e-9,
    because: "the answers are whole numbers",
    source: "textbook problem (Masters): 12 V, 10 milliohm, 30 milliohm load",
    checks: [
      { of: "amps", expected: 300, got: battery.amps },
      { of: "volts at the posts", expected: 9, got: battery.sourceV },
      { of: "watts in the load", expected: 2700, got: battery.loadW },
      { of: "percent lost inside", expected: 25, got: (100 * (12 - battery.sourceV)) / 12 },
    ],
  },
  {
    quantity: "volts lost in a loop of given resistance",
    unit: "V",
    limit: 0.001,
    because: "printed to 0.001 V",
    source: "relay forum example: 9.08 milliohm/m, 1 m, 18.9 A is 0.172 V",
    checks: [{ of: "18.9 A", expected: 0.172, got: loop(12, 0.00908, currentLoad(18.9)).dropV }],
  },
];
