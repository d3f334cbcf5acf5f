import { awgAreaMm2, circularMils, wireCapacityA, wireOhmPerM } from "../../core/reference/index.ts";
import { COPPER_OHM_MM2_PER_M, copperTemperatureFactor } from "../../core/reference/copper.ts";
import type { Quantity } from "./quantity.ts";
import { currentLoad, loop } from "./two-pole.ts";

const FOOT_M = 0.3048;
/** Gauges sold, thinnest first. */
const SOLD = [20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3];

/** Ohm per foot, feet, amps, volts lost: FAA AC 43.13-1B Tables 11-7 and 11-8 (one row of 11-8 is a misprint and left out). */
const AIRCRAFT = [
  [0.00044, 107, 20, 0.942],
  [0.00028, 90, 20, 0.504],
  [0.00306, 100, 20, 6.12],
  [0.00126, 39, 20, 0.98],
  [0.00126, 156, 20, 3.93],
  [0.00126, 273, 20, 6.88],
] as const;

/** mm², conductor °C, volts lost by 20 A over 10 m of conductor: hwt-test.dk/forum/298265, with IEC 60028 copper. */
const BARE_COPPER = [
  [2.5, 20, 1.38],
  [1.5, 20, 2.3],
  [2.5, 30, 1.43],
] as const;

/** Volts, amps, feet out and back, percent allowed, gauge: marine wire guides (K = 10.75 ohm·cmil/ft, ABYC E-11). */
const GAUGE_BY_DROP = [
  [12, 10, 21, 3, 12],
  [12, 10, 21, 10, 16],
  [12, 45, 40, 10, 8],
] as const;

export const voltageDropQuantities: readonly Quantity[] = [
  {
    quantity: "volts lost in a run, resistance given",
    unit: "V",
    limit: 0.005,
    because: "printed to 0.01 V or three digits",
    source: "FAA AC 43.13-1B Tables 11-7 and 11-8; a boat owner's note; an actuator maker's manual",
    checks: [
      ...AIRCRAFT.map(([ohmPerFt, feet, amps, expected]) => ({
        of: `${amps} A over ${feet} ft at ${ohmPerFt} ohm/ft`,
        expected,
        got: lostV(ohmPerFt * feet, amps),
      })),
      // E = 0.0164 I L / S: 1.6 A, 22 m in all, 1.5 mm² is 0.38 V (lena.geoffrichings.co.uk/oldpage/info_voltdrop.html).
      { of: "1.6 A over 22 m of 1.5 mm2 at 0.0164", expected: 0.38, got: lostV((0.0164 * 22) / 1.5, 1.6) },
      // 30 m at 0.044 V/m for 2.6 A and 0.132 V/m for 7.8 A (dcs-sis.com, trip block manual).
      { of: "2.6 A over 30 m", expected: 1.32, got: lostV((0.044 / 2.6) * 30, 2.6) },
      { of: "7.8 A over 30 m", expected: 3.96, got: lostV((0.044 / 2.6) * 30, 7.8) },
    ],
  },
  {
    quantity: "volts lost in a run, printed generously",
    unit: "V",
    limit: 0.05,
    because: "the circular rounds 3.56 up to 3.6",
    source: "FAA AC 43.13-1B Table 11-7",
    checks: [{ of: "20 A over 88 ft at 0.00202 ohm/ft", expected: 3.6, got: lostV(0.00202 * 88, 20) }],
  },
  {
    quantity: "volts lost in copper of a given area",
    unit: "V",
    limit: 0.005,
    because: "printed to 0.01 V",
    source: "a forum answer with its arithmetic, IEC 60028 copper",
    checks: BARE_COPPER.map(([mm2, conductorC, expected]) => ({
      of: `20 A over 10 m of ${mm2} mm2 at ${conductorC} °C`,
      expected,
      got: lostV((COPPER_OHM_MM2_PER_M / mm2) * copperTemperatureFactor(conductorC) * 10, 20),
    })),
  },
  {
    quantity: "volts lost in vehicle cable",
    unit: "V",
    limit: 0.001,
    because: "printed to 0.001 V",
    source: "a shop guide that uses the ISO 6722 maximum",
    // 12 V, 50 W (4.17 A), 5 m of 1.5 mm² in all: 0.265 V (midmarchartsbooks.org/A/size-cable-chart.html).
    checks: [{ of: "4.17 A over 5 m of 1.5 mm2", expected: 0.265, got: lostV(ohmOf("1.5 mm2", 20) * 5, 4.17) }],
  },
  {
    quantity: "volts lost in stranded AWG wire at 75 °C",
    unit: "%",
    limit: 3,
    because: "the example's table counts the strands' lay (2.2 %) and its answer is rounded",
    source: "electrician's course after NEC chapter 9 Table 8",
    // 16 AWG, 100 ft one way, 4 A: 4.0 V (electrician2.com/weltrain05/lpage135.html).
    checks: [{ of: "4 A over 200 ft of 16 AWG", expected: 4, got: lostV(ohmOf("16 AWG", 75) * 200 * FOOT_M, 4) }],
  },
  {
    quantity: "longest run for a drop",
    unit: "m",
    limit: 0.05,
    because: "printed to 0.1 m",
    source: "an engineering reference page",
    // 12 V, 2 %, 10 A at 0.0029 ohm/m: 8.3 m of conductor in all (engineeringtoolbox.com/12-volt-wire-loss-chart-d_1689.html).
    checks: [{ of: "2 % of 12 V at 10 A", expected: 8.3, got: (0.02 * 12) / lostV(0.0029, 10) }],
  },
  {
    quantity: "copper for a drop",
    unit: "circular mils",
    limit: 1,
    because: "printed to whole circular mils",
    source: "marine cable maker's wire-sizing guide",
    checks: [
      // sportsmensmarine.com/archives/1034: 10 A, 21 ft in all, 3 %.
      { of: "12 V", expected: 6271, got: cmilFor(12, 10, 21, 3) },
      { of: "32 V", expected: 2352, got: cmilFor(32, 10, 21, 3) },
    ],
  },
  {
    quantity: "gauge for a drop",
    unit: "gauge steps",
    limit: 0,
    because: "one size is right",
    source: "marine cable maker's guide; marine catalogue; electrical equipment maker's chart after ABYC E-11",
    checks: [
      ...GAUGE_BY_DROP.map(([volts, amps, feet, percent, expected]) => ({
        of: `${percent} % of ${volts} V at ${amps} A over ${feet} ft`,
        expected,
        got: thinnest((gauge) => circularMils(awgAreaMm2(gauge)) >= cmilFor(volts, amps, feet, percent)),
      })),
      {
        // bluesea.com/resources/535: 24 V, 3 %, 10 ft, 100 A is 6 AWG: the drop alone would allow 8, 105 °C capacity does not.
        of: "3 % of 24 V at 100 A over 10 ft, and its capacity",
        expected: 6,
        got: thinnest(
          (gauge) =>
            circularMils(awgAreaMm2(gauge)) >= cmilFor(24, 100, 10, 3) &&
            (wireCapacityA({ size: `${gauge} AWG`, insulationC: 105, ambientC: 30, bundle: 1 }, "insulation") ?? 0) >=
              100,
        ),
      },
    ],
  },
  {
    quantity: "metric size for a drop",
    unit: "mm2",
    limit: 0,
    because: "one size is right",
    source: "marine dealer's guide (conductivity 56)",
    checks: [
      {
        // svb-media.de: 25 W on 12 V is 2.1 A, 18 m one way, 0.6 V: 2.5 mm².
        of: "0.6 V at 2.1 A over 18 m one way",
        expected: 2.5,
        got: [0.75, 1, 1.5, 2.5, 4].find((mm2) => lostV((2 * 18) / (56 * mm2), 2.1) <= 0.6) ?? null,
      },
    ],
  },
];

function lostV(lineOhm: number, amps: number): number {
  return loop(28, lineOhm, currentLoad(amps)).dropV;
}

function ohmOf(size: string, conductorC: number): number {
  return wireOhmPerM(size, conductorC)?.ohmPerM ?? Number.NaN;
}

/** The guides' formula: CM = K I L / E. */
function cmilFor(volts: number, amps: number, feet: number, percent: number): number {
  return (10.75 * amps * feet) / ((volts * percent) / 100);
}

function thinnest(isEnough: (gauge: number) => boolean): number | null {
  return SOLD.find(isEnough) ?? null;
}
