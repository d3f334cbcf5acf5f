import { wireCapacityA } from "../../core/reference/index.ts";
import { ambientFactor } from "../../core/reference/capacity.ts";
import type { Quantity } from "./quantity.ts";

/** Insulation ratings, °C, of the columns of Table 5. */
const COLUMNS_C = [60, 75, 80, 90, 105, 125, 200];
/** AWG, amps by insulation rating: federal.elaws.us/cfr/title-33/section-183.425, Table 5, all columns. */
const TABLE_5 = [
  ["18", [10, 10, 15, 20, 20, 25, 25]],
  ["16", [15, 15, 20, 25, 25, 30, 35]],
  ["14", [20, 20, 25, 30, 35, 40, 45]],
  ["12", [25, 25, 35, 40, 45, 50, 55]],
  ["10", [40, 40, 50, 55, 60, 70, 70]],
  ["8", [55, 65, 70, 70, 80, 90, 100]],
  ["6", [80, 95, 100, 100, 120, 125, 135]],
  ["4", [105, 125, 130, 135, 160, 170, 180]],
  ["3", [120, 145, 150, 155, 180, 195, 210]],
  ["2", [140, 170, 175, 180, 210, 225, 240]],
  ["1", [165, 195, 210, 210, 245, 265, 280]],
  ["1/0", [195, 230, 245, 245, 285, 305, 325]],
  ["2/0", [225, 265, 285, 285, 330, 355, 370]],
  ["3/0", [260, 310, 330, 330, 385, 410, 430]],
  ["4/0", [300, 360, 385, 385, 445, 475, 510]],
] as const;

/** Conductors in the bundle of each column of BUNDLES. */
const BUNDLE_SIZES = [1, 3, 4, 7];
/** AWG, amps by bundle at 30 °C, amps by bundle at 50 °C; 105 °C boat cable: cableyutai.com.tw/tech-02.htm. */
const BUNDLES = [
  ["18", [20, 14, 12, 10], [17, 11.9, 10.2, 8.5]],
  ["16", [25, 17.5, 15, 12.5], [21.3, 14.9, 12.8, 10.6]],
  ["14", [35, 24.5, 21, 17.5], [29.8, 20.8, 17.9, 14.9]],
  ["12", [45, 31.5, 27, 22.5], [38.3, 26.8, 23, 19.1]],
  ["10", [60, 42, 36, 30], [51, 35.7, 30.6, 25.5]],
  ["8", [80, 56, 48, 40], [68, 47.6, 40.8, 34]],
  ["6", [120, 84, 72, 60], [102, 71.4, 61.2, 51]],
  ["4", [160, 112, 96, 80], [136, 95.2, 81.6, 68]],
  ["2", [210, 147, 126, 105], [178.5, 125, 107.1, 89.3]],
  ["1", [245, 171.5, 147, 122.5], [208.3, 145.8, 125, 104.1]],
  ["1/0", [285, 199.5, 171, 142.5], [242.3, 169.6, 145.4, 121.1]],
  ["2/0", [330, 231, 198, 165], [280.5, 196.4, 168.3, 140.3]],
  ["3/0", [385, 269.5, 231, 192.5], [327.3, 229.1, 196.4, 163.6]],
  ["4/0", [445, 311.5, 267, 222.5], [378.3, 264.8, 227, 189.1]],
] as const;

/** Conductor limit °C, ambient °C, factor; reference ambient 45 °C: cableyutai.com.tw/tech-04.htm. */
const FROM_45_C = [
  [60, 45, 1.0],
  [60, 50, 0.82],
  [70, 45, 1.0],
  [70, 50, 0.89],
  [70, 55, 0.77],
  [70, 60, 0.63],
  [85, 45, 1.0],
  [85, 50, 0.94],
  [85, 55, 0.87],
  [85, 60, 0.79],
  [85, 65, 0.71],
  [85, 70, 0.61],
  [85, 75, 0.5],
  [90, 45, 1.0],
  [90, 50, 0.94],
  [90, 55, 0.88],
  [90, 60, 0.82],
  [90, 65, 0.74],
  [90, 70, 0.67],
  [90, 75, 0.58],
  [90, 80, 0.47],
];
/** The same from 30 °C: BS 7671 Table 4B1, scribd.com/document/324896274. */
const FROM_30_C_BS = [
  [60, 30, 1.0],
  [60, 35, 0.91],
  [60, 40, 0.82],
  [60, 45, 0.71],
  [60, 50, 0.58],
  [60, 55, 0.41],
  [70, 30, 1.0],
  [70, 35, 0.94],
  [70, 40, 0.87],
  [70, 45, 0.79],
  [70, 50, 0.71],
  [70, 55, 0.61],
  [70, 60, 0.5],
  [70, 65, 0.35],
  [90, 30, 1.0],
  [90, 35, 0.96],
  [90, 40, 0.91],
  [90, 45, 0.87],
  [90, 50, 0.82],
  [90, 55, 0.76],
  [90, 60, 0.71],
  [90, 65, 0.65],
];
/** The same from 30 °C: NEC Table 310.15(B)(1), up.codes/s/correction-factor-for-ambient-temperatures. */
const FROM_30_C_NEC = [
  [60, 30, 1.0],
  [60, 35, 0.91],
  [60, 40, 0.82],
  [60, 45, 0.71],
  [60, 50, 0.58],
  [60, 55, 0.41],
  [75, 30, 1.0],
  [75, 35, 0.94],
  [75, 40, 0.88],
  [75, 45, 0.82],
  [75, 50, 0.75],
  [75, 55, 0.67],
  [75, 60, 0.58],
  [75, 65, 0.47],
  [75, 70, 0.33],
  [90, 30, 1.0],
  [90, 35, 0.96],
  [90, 40, 0.91],
  [90, 45, 0.87],
  [90, 50, 0.82],
  [90, 55, 0.76],
  [90, 60, 0.71],
  [90, 65, 0.65],
  [90, 70, 0.58],
  [90, 75, 0.5],
  [90, 80, 0.41],
  [90, 85, 0.29],
];

/** mm², amps at 30, 40, 45, 50, 55 °C of 70 °C PVC cable: easymanua.ls/atlas-copco/ga-75plus/manual?p=192. */
const AMBIENTS_C = [30, 40, 45, 50, 55];
const AMPS_BY_AMBIENT = [
  [4, [27, 23, 21, 19, 16]],
  [6, [34, 30, 27, 24, 21]],
  [10, [46, 40, 36, 33, 28]],
  [16, [62, 54, 49, 44, 38]],
  [25, [80, 70, 63, 57, 49]],
  [35, [99, 86, 78, 70, 60]],
  [50, [118, 103, 93, 84, 72]],
  [70, [149, 130, 118, 106, 91]],
  [95, [179, 156, 141, 127, 109]],
  [120, [206, 179, 163, 146, 126]],
] as const;

/** mm² at least, largest fuse, A: vehicle maker's 40 °C table (field notes of the trade: Hyundai Body Builder 2015, p. 217). */
const LARGEST_FUSE = [
  [0.5, 7.5],
  [0.85, 10],
  [1.25, 15],
  [2, 20],
  [3, 25],
  [5, 30],
  [8, 40],
  [10, 50],
  [15, 60],
  [20, 80],
  [30, 100],
  [40, 125],
  [60, 150],
] as const;
const METRIC_SIZES = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70];

const free = { insulationC: 105, ambientC: 30, bundle: 1 };

export const capacityQuantities: readonly Quantity[] = [
  {
    quantity: "current limit by insulation rating",
    unit: "A",
    limit: 0,
    because: "a look-up",
    source: "33 CFR 183.425 Table 5",
    checks: TABLE_5.flatMap(([awg, amps]) =>
      amps.map((expected, column) => {
        const insulationC = COLUMNS_C[column] ?? 0;
        const got = wireCapacityA({ ...free, size: `${awg} AWG`, insulationC }, "insulation");
        return { of: `${awg} AWG at ${insulationC} °C insulation`, expected, got };
      }),
    ),
  },
  {
    quantity: "current limit by wire, vehicle maker's table",
    unit: "A",
    limit: 0,
    because: "a look-up",
    source: "a vehicle maker's body-builder guide, 40 °C",
    checks: METRIC_SIZES.map((mm2) => ({
      of: `${mm2} mm2`,
      expected: LARGEST_FUSE.findLast(([atLeast]) => atLeast <= mm2)?.[1] ?? Number.NaN,
      got: wireCapacityA({ ...free, size: `${mm2} mm2` }, "vehicle"),
    })),
  },
  {
    quantity: "current limit in bundles",
    unit: "A",
    limit: 0.06,
    because: "printed to 0.1 A",
    source: "UL 1426 boat cable, 105 °C, cable maker's table",
    checks: BUNDLES.flatMap(([awg, amps]) =>
      amps.map((expected, column) => {
        const bundle = BUNDLE_SIZES[column] ?? 0;
        const got = wireCapacityA({ ...free, size: `${awg} AWG`, bundle }, "insulation");
        return { of: `${awg} AWG, ${bundle} together`, expected, got };
      }),
    ),
  },
  {
    quantity: "current limit at 50 °C ambient",
    unit: "%",
    limit: 1.2,
    because: "the law rounds the factor 0.856 to 0.85 and the table prints to 0.1 A",
    source: "UL 1426 boat cable, 105 °C, in engine spaces, cable maker's table",
    checks: BUNDLES.flatMap(([awg, , amps]) =>
      amps.map((expected, column) => {
        const bundle = BUNDLE_SIZES[column] ?? 0;
        const got = wireCapacityA({ ...free, size: `${awg} AWG`, bundle, ambientC: 50 }, "insulation");
        return { of: `${awg} AWG, ${bundle} together`, expected, got };
      }),
    ),
  },
  {
    quantity: "ambient derating factor",
    unit: "ratio",
    limit: 0.006,
    because: "printed to two digits",
    source: "IEC 60092 style table (45 °C), BS 7671 Table 4B1 and NEC Table 310.15(B)(1) (30 °C)",
    checks: [
      ...FROM_45_C.map((row) => factorCheck(row, 45)),
      ...FROM_30_C_BS.map((row) => factorCheck(row, 30)),
      ...FROM_30_C_NEC.map((row) => factorCheck(row, 30)),
    ],
  },
  {
    quantity: "current limit against ambient, 70 °C PVC",
    unit: "A",
    limit: 1.5,
    because: "printed to whole amperes, after factors of two digits (0.005 of 206 A is 1 A)",
    source: "machine maker's manual after IEC 60364-5-52",
    checks: AMPS_BY_AMBIENT.flatMap(([mm2, amps]) =>
      amps.map((expected, column) => {
        const ambientC = AMBIENTS_C[column] ?? 0;
        return { of: `${mm2} mm2 at ${ambientC} °C`, expected, got: (amps[0] ?? 0) * ambientFactor(70, ambientC, 30) };
      }),
    ),
  },
];

function factorCheck(row: readonly number[], tableC: number) {
  const [insulationC = 0, ambientC = 0, expected = 0] = row;
  return { of: `${insulationC} °C at ${ambientC} °C`, expected, got: ambientFactor(insulationC, ambientC, tableC) };
}
