import type { Load } from "./elements.ts";

/** What a thing that uses current has in common with all others, between `+` and `-`; each kind says what differs. */
export const plainUse: Omit<Load, "draw" | "ratedV" | "statedA" | "onWhen" | "noun"> = {
  type: "load",
  a: "+",
  b: "-",
  role: "use",
  minV: null,
  maxV: null,
  polarised: false,
  conductsReversed: true,
  continuous: true,
  mustBeOffAtRest: false,
  start: null,
};

/** Amps at the rated volts; `null` while the watts are unknown. */
export function statedAmps(watts: number | null, ratedV: number): number | null {
  return watts === null ? null : watts / ratedV;
}
