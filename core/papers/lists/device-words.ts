import { fuseColour } from "../../reference/index.ts";
import type { DeviceRow } from "./device-rows.ts";
import { ampsWords } from "../words/index.ts";

/** "15 A blue, not fitted": the rating, the colour of its plastic where one is standard, and whether it is there. */
export function fuseWords({ ratingA, element }: DeviceRow): string {
  const { gates, closed } = element.spec;
  const colour = ratingA === null || gates === null ? null : fuseColour(gates, ratingA);
  return `${ampsWords(ratingA)}${colour === null ? "" : ` ${colour}`}${closed ? "" : ", not fitted"}`;
}

/** The largest spare allowed; says so when the drawing itself is over it. */
export function largestWords({ largestA, ratingA }: DeviceRow): string {
  if (largestA === null) return "not known";
  const isOver = ratingA !== null && ratingA > largestA;
  return `${ampsWords(largestA)}${isOver ? ": TOO BIG AS DRAWN" : ""}`;
}
