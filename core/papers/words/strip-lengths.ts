/** Bare conductor at each end, millimetres, by copper area. Common practice, no source: the terminal maker's sheet comes first. */
const STRIP_MM = [
  { toMm2: 2.5, stripMm: 7 },
  { toMm2: 6, stripMm: 9 },
  { toMm2: 16, stripMm: 14 },
  { toMm2: 50, stripMm: 18 },
] as const;

/** Usual strip length in millimetres; `null` for an unknown size and for cable above 50 mm². */
export function stripMm(areaMm2: number | null): number | null {
  return areaMm2 === null ? null : (STRIP_MM.find(({ toMm2 }) => areaMm2 <= toMm2 + 1e-9)?.stripMm ?? null);
}
