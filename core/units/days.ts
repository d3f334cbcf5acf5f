import { formatNumber } from "./number.ts";

/** Less than this many days is told in hours. */
const HOURS_BELOW_DAYS = 2;

/** A time given in days, for people to read: "about 12 days", "about 31 hours" below two days, "under an hour". Whole, rounded down: a battery promised no longer than it lasts. */
export function formatDays(days: number): string {
  if (days >= HOURS_BELOW_DAYS) return `about ${formatNumber(Math.floor(days), 3)} days`;
  const hours = Math.floor(days * 24);
  if (hours < 1) return "under an hour";
  return hours === 1 ? "about 1 hour" : `about ${hours} hours`;
}
