import { awgAreaMm2, circularMils, wireOhmPerM } from "../../core/reference/index.ts";
import { copperTemperatureFactor } from "../../core/reference/copper.ts";
import type { Quantity } from "./quantity.ts";

const OHM_PER_KFT_PER_OHM_PER_M = 304.8;

/** Gauge, circular mils, ohm per 1000 ft at 20 °C: hyperphysics.phy-astr.gsu.edu/hbase/tables/wirega.html, every row as printed. */
const GAUGES = [
  ["24", 404.01, 25.67],
  ["23", 509.45, 20.36],
  ["22", 642.4, 16.14],
  ["21", 810.1, 12.8],
  ["20", 1021.5, 10.15],
  ["19", 1288.1, 8.051],
  ["18", 1624.3, 6.385],
  ["17", 2048.2, 5.064],
  ["16", 2582.9, 4.016],
  ["15", 3256.7, 3.184],
  ["14", 4106.8, 2.525],
  ["13", 5178.4, 2.003],
  ["12", 6529, 1.588],
  ["11", 8234, 1.26],
  ["10", 10381, 0.9989],
  ["9", 13094, 0.7921],
  ["8", 16509, 0.6282],
  ["7", 20816, 0.4982],
  ["6", 26250, 0.3951],
  ["5", 33102, 0.3133],
  ["4", 41742, 0.2485],
  ["3", 52634, 0.197],
  ["2", 66373, 0.1563],
  ["1", 83694, 0.124],
  ["1/0", 105530, 0.0983],
  ["2/0", 133080, 0.078],
  ["3/0", 167810, 0.0618],
  ["4/0", 211600, 0.049],
] as const;

/** mm², milliohm per metre: conductor resistance of cables a maker declares to ISO 6722 (rows seen in print only). */
const ISO_6722 = [
  [0.13, 136],
  [0.22, 84.4],
  [0.35, 54.4],
  [0.5, 37.1],
  [0.75, 24.7],
  [1, 18.5],
  [1.5, 12.7],
  [2, 9.42],
  [2.5, 7.6],
  [3, 6.15],
  [4, 4.71],
  [6, 3.14],
  [10, 1.82],
  [16, 1.16],
] as const;

/** mm², ohm per km: etechnik-synergie.com/technical_information/condutor-resistance and uecables.com/471, class 5, plain. */
const IEC_60228_CLASS_5 = [
  [25, 0.78],
  [35, 0.554],
  [50, 0.386],
  [70, 0.272],
  [95, 0.206],
  [120, 0.161],
  [150, 0.129],
  [185, 0.106],
  [240, 0.0801],
  [300, 0.0641],
] as const;

/** Gauge, ohm per 1000 ft at 75 °C, stranded uncoated: electrical-design-tutor.com/conductorresistance.html. */
const NEC_TABLE_8 = [
  ["18", 7.95],
  ["16", 4.99],
  ["14", 3.14],
  ["12", 1.98],
  ["10", 1.24],
  ["8", 0.778],
  ["6", 0.491],
  ["4", 0.308],
  ["3", 0.245],
  ["2", 0.194],
  ["1", 0.154],
  ["1/0", 0.122],
  ["2/0", 0.0967],
  ["3/0", 0.0766],
  ["4/0", 0.0608],
] as const;

/** °C, factor that brings a resistance back to 20 °C: uecables.com/471-power-copper-conductors-according-to-iec-60228.html. */
const BACK_TO_20_C = [
  [5, 1.064],
  [10, 1.042],
  [15, 1.02],
  [20, 1],
  [25, 0.98],
  [30, 0.962],
  [35, 0.943],
  [40, 0.926],
  [45, 0.909],
  [50, 0.893],
  [55, 0.877],
  [60, 0.862],
  [65, 0.847],
  [70, 0.833],
  [75, 0.82],
  [80, 0.806],
  [85, 0.794],
  [90, 0.781],
  [95, 0.769],
  [100, 0.758],
] as const;

const gaugeNumber = (awg: string) => (awg.endsWith("/0") ? 1 - Number(awg[0]) : Number(awg));
const mohmPerM = (size: string) => (wireOhmPerM(size, 20)?.ohmPerM ?? Number.NaN) * 1000;

export const wireQuantities: readonly Quantity[] = [
  {
    quantity: "copper area of AWG sizes",
    unit: "%",
    limit: 0.05,
    because: "the table is printed to four or five digits",
    source: "printed AWG table (circular mils), physics department of a university",
    checks: GAUGES.map(([awg, cmil]) => ({
      of: `${awg} AWG`,
      expected: cmil,
      got: circularMils(awgAreaMm2(gaugeNumber(awg))),
    })),
  },
  {
    quantity: "resistance of AWG sizes at 20 °C",
    unit: "%",
    limit: 0.5,
    because: "the largest sizes are printed to two digits",
    source: "printed AWG table (ohm per 1000 ft), physics department of a university",
    checks: GAUGES.map(([awg, , expected]) => ({
      of: `${awg} AWG`,
      expected,
      got: (mohmPerM(`${awg} AWG`) / 1000) * OHM_PER_KFT_PER_OHM_PER_M,
    })),
  },
  {
    quantity: "resistance of vehicle cable at 20 °C",
    unit: "mohm/m",
    limit: 1e-9,
    because: "a look-up",
    source: "ISO 6722 maxima as printed by a cable maker",
    checks: ISO_6722.map(([mm2, expected]) => ({ of: `${mm2} mm2`, expected, got: mohmPerM(`${mm2} mm2`) })),
  },
  {
    quantity: "resistance of cable above 16 mm2 at 20 °C",
    unit: "mohm/m",
    limit: 1e-9,
    because: "a look-up",
    source: "IEC 60228 class 5, plain copper, three pages agreeing",
    checks: IEC_60228_CLASS_5.map(([mm2, expected]) => ({ of: `${mm2} mm2`, expected, got: mohmPerM(`${mm2} mm2`) })),
  },
  {
    quantity: "resistance of stranded AWG sizes at 75 °C",
    unit: "%",
    limit: 3,
    because: "strands lie askew: stranded conductors are 1.8 to 2.5 % above the solid copper of the gauge formula",
    source: "NEC chapter 9 Table 8, 2011",
    checks: NEC_TABLE_8.map(([awg, expected]) => ({
      of: `${awg} AWG`,
      expected,
      got: (wireOhmPerM(`${awg} AWG`, 75)?.ohmPerM ?? Number.NaN) * OHM_PER_KFT_PER_OHM_PER_M,
    })),
  },
  {
    quantity: "resistance against conductor temperature",
    unit: "%",
    limit: 0.5,
    because: "the standard rounds the coefficient to 0.004 per kelvin, which makes up to 0.44 %",
    source: "IEC 60228 temperature correction factors",
    checks: BACK_TO_20_C.map(([conductorC, expected]) => ({
      of: `${conductorC} °C`,
      expected,
      got: 1 / copperTemperatureFactor(conductorC),
    })),
  },
];
