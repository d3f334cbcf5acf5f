import { largestRatingA, nextRatingA } from "../../reference/index.ts";

/** A fuse to fit. */
interface FuseChoice {
  readonly body: "blade" | "maxi-blade" | "bolt";
  readonly ratingA: number;
}

/** Common bodies, smallest first. */
const BODIES = ["blade", "maxi-blade", "bolt"] as const;

/** Smallest fuse sold of at least this rating. */
export function fuseOfAtLeast(amps: number): FuseChoice | null {
  return choose((body) => nextRatingA(body, amps), Math.min);
}

/** Largest fuse sold of at most this rating. */
export function fuseOfAtMost(amps: number): FuseChoice | null {
  return choose((body) => largestRatingA(body, amps), Math.max);
}

/** The best rating over all bodies, in the smallest body that is sold with it. */
function choose(
  ratingIn: (body: string) => number | null,
  better: (one: number, other: number) => number,
): FuseChoice | null {
  const choices = BODIES.flatMap((body): FuseChoice[] => {
    const ratingA = ratingIn(body);
    return ratingA === null ? [] : [{ body, ratingA }];
  });
  if (choices.length === 0) return null;
  const best = choices.map(({ ratingA }) => ratingA).reduce((one, other) => better(one, other));
  return choices.find(({ ratingA }) => ratingA === best) ?? null;
}

/**
 * The fuse for a run that carries `loadA` steadily over wires for `capacityA` at most: the smallest that is not loaded over
 * `loadPercent`; where the wire doesn't allow that one, the largest it allows, if that carries the load at all.
 */
export function fuseFor(loadA: number, capacityA: number, loadPercent: number): FuseChoice | null {
  const wanted = fuseOfAtLeast((loadA * 100) / loadPercent);
  if (wanted && wanted.ratingA <= capacityA * (1 + 1e-9)) return wanted;
  const largest = fuseOfAtMost(capacityA);
  return largest && largest.ratingA >= loadA ? largest : null;
}
