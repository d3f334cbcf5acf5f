/** "10 A"; a rating nobody gave reads "? A", so that the gap shows on the drawing. */
export function amount(value: number | null, unit: string): string {
  return `${value === null ? "?" : Number(value.toPrecision(6))} ${unit}`;
}
