import { accepted, refused, type Typed } from "./typed.ts";

/** A number as people type it, unsigned or signed: "12", "12.5", ".5", "1,5". No thousands marks. */
export const NUMBER_PATTERN = "[+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][+-]?\\d+)?";

/** Digits and a comma that could as well mean thousands: refused, because guessing wrong is a factor of 1000. */
const AMBIGUOUS = /^[+-]?[1-9]\d{0,2},\d{3}$/;
const WHOLE_NUMBER = new RegExp(`^${NUMBER_PATTERN}$`);

/**
 * Reads a plain number; a comma is a decimal mark ("1,5" is 1.5).
 * No answer: anything else, "1,250" (thousands or decimals?) and numbers too large to hold are refused.
 */
export function parseNumber(text: string): Typed<number> {
  const typed = text.trim().replace("−", "-");
  if (AMBIGUOUS.test(typed)) return refused(text, "a number without a thousands mark, like 1250 or 1.25");
  const value = WHOLE_NUMBER.test(typed) ? Number(typed.replace(",", ".")) : Number.NaN;
  return Number.isFinite(value) ? accepted(value) : refused(text, "a number, like 12.5");
}

/**
 * A number for people to read: rounded to `digits` significant digits, but never dropping digits left of the point
 * (1234 stays "1234"), without trailing zeros, exponent or negative zero.
 */
export function formatNumber(value: number, digits = 3): string {
  if (value === 0) return "0";
  const decimals = digits - 1 - Math.floor(Math.log10(Math.abs(value)));
  const text = value.toFixed(Math.min(Math.max(decimals, 0), 20));
  const trimmed = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return trimmed === "-0" ? "0" : trimmed;
}
