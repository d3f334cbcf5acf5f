import type { ReferenceTable } from "./reference-table.ts";

/** At `percent` of its rating and above, a fuse of these ratings opens within `withinS` at the latest. */
interface Gate {
  readonly percent: number;
  readonly withinS: number;
  /** It carries up to `percent` at least this long; absent where no minimum was seen. */
  readonly holdsS?: number;
  /** Ratings it was published for, A, both ends included. */
  readonly ratingsA: readonly [from: number, to: number];
  readonly source?: string;
}

const RELAY_SHEETS = "limits of ISO 8820-3 as relay data sheets print them (overload current)";

const MAXI_BLADE: readonly Gate[] = [
  { percent: 135, withinS: 1800, holdsS: 60, ratingsA: [20, 80] },
  { percent: 200, withinS: 50, holdsS: 2, ratingsA: [20, 80] },
  { percent: 350, withinS: 7, holdsS: 0.2, ratingsA: [20, 80] },
  { percent: 600, withinS: 1, holdsS: 0.04, ratingsA: [20, 80] },
];

/** By fuse body, slowest gate first. Bolt-down bodies are missing: no table of theirs was seen. */
const GATES: Readonly<Record<string, readonly Gate[]>> = {
  blade: [
    { percent: 135, withinS: 600, holdsS: 0.75, ratingsA: [3, 40] },
    { percent: 135, withinS: 600, holdsS: 0.35, ratingsA: [1, 2] },
    { percent: 160, withinS: 50, holdsS: 0.25, ratingsA: [3, 40] },
    { percent: 200, withinS: 5, holdsS: 0.15, ratingsA: [3, 40] },
    { percent: 200, withinS: 5, holdsS: 0.1, ratingsA: [1, 2] },
    { percent: 350, withinS: 0.5, ratingsA: [1, 40], source: RELAY_SHEETS },
    { percent: 600, withinS: 0.1, ratingsA: [1, 30], source: RELAY_SHEETS },
    { percent: 600, withinS: 0.15, ratingsA: [35, 40] },
    // No medium blade is sold above 40 A: one drawn so is a high-current blade.
    ...MAXI_BLADE.map((gate): Gate => ({ ...gate, ratingsA: [50, 80] })),
  ],
  "mini-blade": [
    { percent: 135, withinS: 600, holdsS: 0.75, ratingsA: [2, 30] },
    { percent: 200, withinS: 5, holdsS: 0.15, ratingsA: [2, 30] },
    { percent: 350, withinS: 0.5, holdsS: 0.08, ratingsA: [2, 30] },
    { percent: 600, withinS: 0.1, holdsS: 0.03, ratingsA: [2, 30] },
  ],
  "maxi-blade": MAXI_BLADE,
  glass: [
    { percent: 135, withinS: 3600, ratingsA: [0, 60], source: "UL/CSA 248-14" },
    { percent: 200, withinS: 120, ratingsA: [0, 30], source: "UL/CSA 248-14" },
    { percent: 200, withinS: 240, ratingsA: [35, 60], source: "UL/CSA 248-14" },
  ],
};

/**
 * Longest time in seconds a fuse of `body` and `ratingA` may take to open at `faultA`: that of the highest published gate at or
 * below the fault. Nothing is interpolated: between two gates only the slower one is promised.
 * No answer: `null` where no gate applies: a body without a published table (bolt-down, breakers), a rating outside the
 * table, or a current below its lowest gate, which may never open the fuse.
 */
export function longestOpeningS(body: string | null, ratingA: number, faultA: number): number | null {
  const applying = gatesOf(body, ratingA).filter(({ percent }) => faultA * 100 >= percent * ratingA * (1 - 1e-9));
  return applying.at(-1)?.withinS ?? null;
}

/**
 * Seconds a fuse of `body` and `ratingA` surely carries `amps`: that of the lowest published gate at or above them; 0 above all of
 * them. No answer: `null` where no minimum times are published for it. Up to its rating it carries them for ever: don't ask.
 */
export function holdsForS(body: string | null, ratingA: number, amps: number): number | null {
  const gates = gatesOf(body, ratingA).filter(({ holdsS }) => holdsS !== undefined);
  if (gates.length === 0) return null;
  return gates.find(({ percent }) => amps * 100 <= percent * ratingA * (1 + 1e-9))?.holdsS ?? 0;
}

/**
 * Most heat a fuse may let through in a short of `faultA`, A²·s: current squared times longest time at the highest published gate
 * up to the fault. A stronger short opens a fuse so much sooner that it never lets more through.
 * No answer: `null` as for `longestOpeningS`.
 */
export function letThroughA2s(body: string | null, ratingA: number, faultA: number): number | null {
  const gate = gatesOf(body, ratingA).findLast(({ percent }) => faultA * 100 >= percent * ratingA * (1 - 1e-9));
  return gate ? ((gate.percent * ratingA) / 100) ** 2 * gate.withinS : null;
}

/** Whether any operating times are published for this body and rating. */
export function hasOpeningTimes(body: string | null, ratingA: number): boolean {
  return gatesOf(body, ratingA).length > 0;
}

export const fuseGatesTable: ReferenceTable = {
  id: "fuse-gates",
  title: "Longest operating time of fuses",
  unit: "s",
  source: "fuse makers' data sheets to ISO 8820-3 (blade sizes), time-current tables",
  edition: "2022 to 2025",
  range: "32 V fuses at 23 °C; between two gates the slower one holds; bolt-down bodies have no published table here",
  rows: Object.entries(GATES).flatMap(([body, gates]) =>
    gates.map(({ percent, withinS, ratingsA: [from, to], source }) => ({
      of: `${body}, ${from > 0 ? `${from} to` : "up to"} ${to} A, at ${percent} %`,
      value: withinS,
      ...(source === undefined ? {} : { source }),
    })),
  ),
};

function gatesOf(body: string | null, ratingA: number): readonly Gate[] {
  const gates = (body !== null && Object.hasOwn(GATES, body) && GATES[body]) || [];
  return gates.filter(({ ratingsA: [from, to] }) => ratingA >= from && ratingA <= to);
}
