import { awgAreaMm2, circularMils, crimpPullOut } from "../../core/reference/index.ts";
import type { Quantity } from "./quantity.ts";

/** Gauge, circular mils: crimp guide of an amateur club on combining wires in one barrel (Great Plains). */
const CIRCULAR_MILS = [
  [12, 6530],
  [13, 5180],
  [14, 4110],
  [15, 3260],
  [16, 2580],
  [17, 2050],
  [18, 1620],
  [19, 1290],
  [20, 1020],
  [21, 810],
  [22, 642],
  [24, 404],
] as const;

/** Gauges in one barrel, circular mils together: the same guide (22 + 20 and 18 + 18). */
const COMBINED = [
  [[22, 20], 1662],
  [[18, 18], 3240],
] as const;

/** Gauge, lbf, newtons: terminal maker's application specifications 114-2161 and 114-2157. */
const PULL_OUT = [
  ["26", 3, 13.4],
  ["24", 5, 22.3],
  ["22", 8, 35.6],
  ["20", 13, 57.9],
  ["18", 20, 89],
  ["16", 30, 133.5],
  ["14", 50, 222.5],
  ["12", 70, 311.5],
  ["10", 80, 356],
  ["8", 90, 400.5],
  ["6", 100, 445],
  ["4", 140, 623],
  ["2", 180, 801],
] as const;
const NEWTON_PER_LBF = 4.4482216;

export const crimpQuantities: readonly Quantity[] = [
  {
    quantity: "copper area in circular mils",
    unit: "%",
    limit: 0.3,
    because: "printed to three digits",
    source: "published crimp guide",
    checks: CIRCULAR_MILS.map(([gauge, expected]) => ({
      of: `${gauge} AWG`,
      expected,
      got: circularMils(awgAreaMm2(gauge)),
    })),
  },
  {
    quantity: "wires together in one barrel, circular mils",
    unit: "%",
    limit: 0.4,
    because: "the sum of areas printed to three digits",
    source: "published crimp guide",
    checks: COMBINED.map(([gauges, expected]) => ({
      of: gauges.join(" + "),
      expected,
      got: circularMils(gauges.reduce((sum, gauge) => sum + awgAreaMm2(gauge), 0)),
    })),
  },
  {
    quantity: "smallest pull of a crimp",
    unit: "N",
    limit: 0,
    because: "a look-up",
    source: "terminal maker's application specifications",
    checks: PULL_OUT.map(([awg, , expected]) => ({ of: `${awg} AWG`, expected, got: pull(awg)?.minN ?? null })),
  },
  {
    quantity: "smallest pull of a crimp, pounds as newtons",
    unit: "%",
    limit: 0.5,
    because: "the specifications round both columns",
    source: "terminal maker's application specifications; 1 lbf = 4.4482 N",
    checks: PULL_OUT.map(([awg, lbf]) => ({
      of: `${awg} AWG`,
      expected: lbf * NEWTON_PER_LBF,
      got: pull(awg)?.minN ?? null,
    })),
  },
];

function pull(awg: string) {
  return crimpPullOut(`${awg} AWG`);
}
