import type { ReferenceRow, ReferenceTable } from "./reference-table.ts";

interface RatingRange {
  readonly ratingsA: readonly number[];
  readonly fromMemory?: true;
}

/** What is sold, by fuse body, smallest first. */
const RATINGS: Readonly<Record<string, RatingRange>> = {
  blade: { ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 40] },
  "mini-blade": { ratingsA: [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30] },
  "maxi-blade": { ratingsA: [20, 30, 40, 50, 60, 70, 80] },
  bolt: { ratingsA: [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 400, 500], fromMemory: true },
  glass: { ratingsA: [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30], fromMemory: true },
};

/** Ratings sold in `body`, A, smallest first; empty for a body we do not know. */
export function standardRatingsA(body: string): readonly number[] {
  return Object.hasOwn(RATINGS, body) ? (RATINGS[body]?.ratingsA ?? []) : [];
}

/** Smallest rating of `body` that is at least `atLeastA`; `null` when none is large enough. */
export function nextRatingA(body: string, atLeastA: number): number | null {
  return standardRatingsA(body).find((ratingA) => ratingA >= atLeastA * (1 - 1e-9)) ?? null;
}

/** Largest rating of `body` that is at most `atMostA`; `null` when none is small enough. */
export function largestRatingA(body: string, atMostA: number): number | null {
  return standardRatingsA(body).findLast((ratingA) => ratingA <= atMostA * (1 + 1e-9)) ?? null;
}

export const fuseRatingsTable: ReferenceTable = {
  id: "fuse-ratings",
  title: "Fuse ratings sold",
  unit: "A",
  source: "fuse makers' ranges within ISO 8820-3 (blade sizes, up to 100 A) and ISO 8820-5 (strip, 30 to 500 A)",
  edition: "2015",
  range: "32 V fuses of vehicles",
  rows: Object.entries(RATINGS).flatMap(([body, { ratingsA, fromMemory }]) =>
    ratingsA.map((value): ReferenceRow => ({ of: body, value, ...(fromMemory ? { fromMemory } : {}) })),
  ),
};
