import { fuseMilliohm, holdsForS, longestOpeningS } from "../../core/reference/index.ts";
import type { Quantity } from "./quantity.ts";

/** Rating A, cold milliohm: medium blade data sheet (rows seen; 35 A is remembered and left out). */
const COLD_MILLIOHM = [
  [1, 123],
  [2, 53.5],
  [3, 31.1],
  [4, 22.8],
  [5, 17.85],
  [7.5, 10.91],
  [10, 7.7],
  [15, 4.8],
  [20, 3.38],
  [25, 2.52],
  [30, 1.97],
  [40, 1.44],
] as const;

/** Body, rating A, fault A, longest seconds, where printed. */
const OPENINGS = [
  // "max opening times 600 s at 10.125 A, 50 s at 12 A, 5 s at 15 A", 7.5 A medium blade sheet.
  ["blade", 7.5, 10.125, 600],
  ["blade", 7.5, 12, 50],
  ["blade", 7.5, 15, 5],
  // 10 A at 189 %: between the 160 and the 200 % gate only the slower is promised (relay forum example against that sheet).
  ["blade", 10, 18.9, 50],
  // 40 A medium blade: 350 % 0.5 s, 600 % 0.15 s, same series.
  ["blade", 40, 140, 0.5],
  ["blade", 40, 240, 0.15],
  // Limits of ISO 8820-3 types C and F as relay data sheets print them: 2.0, 3.5 and 6.0 times.
  ["blade", 20, 40, 5],
  ["blade", 20, 70, 0.5],
  ["blade", 20, 120, 0.1],
  // Miniature blade sheet, 20 A: 27 A 600 s, 40 A 5 s, 70 A 0.5 s; 600 % 0.1 s.
  ["mini-blade", 20, 27, 600],
  ["mini-blade", 20, 40, 5],
  ["mini-blade", 20, 70, 0.5],
  ["mini-blade", 20, 120, 0.1],
  // High-current blade sheet, rev. 2025-01: 135 % 1800 s, 200 % 50 s, 350 % 7 s, 600 % 1 s.
  ["maxi-blade", 40, 54, 1800],
  ["maxi-blade", 40, 80, 50],
  ["maxi-blade", 40, 140, 7],
  ["maxi-blade", 40, 240, 1],
  // UL/CSA 248-14: 135 % 1 h; 200 % 2 min up to 30 A, 4 min from 35 to 60 A.
  ["glass", 20, 27, 3600],
  ["glass", 20, 40, 120],
  ["glass", 40, 80, 240],
] as const;

/** Body, rating A, amps, shortest opening seconds: the same sheets' minimum columns (1 and 2 A from the older medium blade sheet). */
const HOLDS = [
  ["blade", 10, 13.5, 0.75],
  ["blade", 10, 16, 0.25],
  ["blade", 10, 20, 0.15],
  ["blade", 2, 2.7, 0.35],
  ["blade", 2, 4, 0.1],
  ["mini-blade", 20, 27, 0.75],
  ["mini-blade", 20, 40, 0.15],
  ["mini-blade", 20, 70, 0.08],
  ["mini-blade", 20, 120, 0.03],
  ["maxi-blade", 40, 54, 60],
  ["maxi-blade", 40, 80, 2],
  ["maxi-blade", 40, 140, 0.2],
  ["maxi-blade", 40, 240, 0.04],
] as const;

/** Millivolts across a fuse, rating A, milliamps: published tables for finding a drain with a millivolt meter. */
const AS_SHUNT = [
  [2.4, 10, 312],
  [0.77, 10, 100],
] as const;

export const fuseQuantities: readonly Quantity[] = [
  {
    quantity: "cold resistance of blade fuses",
    unit: "mohm",
    limit: 1e-9,
    because: "a look-up",
    source: "fuse maker's data sheet, medium blade",
    checks: COLD_MILLIOHM.map(([ratingA, expected]) => ({ of: `${ratingA} A`, expected, got: fuseMilliohm(ratingA) })),
  },
  {
    quantity: "longest opening time of fuses",
    unit: "s",
    limit: 0,
    because: "a look-up of published gates",
    source: "fuse makers' data sheets to ISO 8820-3; UL/CSA 248-14",
    checks: OPENINGS.map(([body, ratingA, faultA, expected]) => ({
      of: `${body} ${ratingA} A at ${faultA} A`,
      expected,
      got: longestOpeningS(body, ratingA, faultA),
    })),
  },
  {
    quantity: "time a fuse carries an overload",
    unit: "s",
    limit: 0,
    because: "a look-up of published gates",
    source: "fuse makers' data sheets to ISO 8820-3, minimum times",
    checks: HOLDS.map(([body, ratingA, amps, expected]) => ({
      of: `${body} ${ratingA} A at ${amps} A`,
      expected,
      got: holdsForS(body, ratingA, amps),
    })),
  },
  {
    quantity: "current read as millivolts across a fuse",
    unit: "mA",
    limit: 1,
    because: "printed to whole milliamperes",
    source: "published drain-by-millivolt tables",
    checks: AS_SHUNT.map(([millivolt, ratingA, expected]) => ({
      of: `${millivolt} mV on ${ratingA} A`,
      expected,
      got: (1000 * millivolt) / fuseMilliohm(ratingA),
    })),
  },
];
