/** Rounding of a solve, as a share of the limit: a value that differs by less is equal to it, and equal is within. */
const SLACK = 1e-9;

export function isOver(value: number, limit: number): boolean {
  return value > limit + Math.abs(limit) * SLACK;
}

export function isUnder(value: number, limit: number): boolean {
  return value < limit - Math.abs(limit) * SLACK;
}
