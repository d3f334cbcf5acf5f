import type { ReferenceTable } from "./reference-table.ts";

const CURRENT_EXPONENT = 0.55;

/**
 * Current of a filament lamp at `volts`, A, from its watts at its rated volts: I = W/V0 · (V/V0)^0.55, odd in `volts`.
 * Range: gas-filled lamps from half to one and a quarter of rated volts, about 10 %; halogen less exact.
 * Source: Fink and Beaty, Standard Handbook for Electrical Engineers, 11th edition, p. 22-8.
 */
export function filamentA(watts: number, ratedV: number, volts: number): number {
  return Math.sign(volts) * (watts / ratedV) * Math.abs(volts / ratedV) ** CURRENT_EXPONENT;
}

export const filamentTable: ReferenceTable = {
  id: "filament",
  title: "Filament lamps: power of the voltage ratio",
  unit: "exponent",
  source: "Fink and Beaty, Standard Handbook for Electrical Engineers, p. 22-8, as quoted",
  edition: "11th, 1978",
  range: "gas-filled tungsten lamps near rated voltage, about 10 %; less exact for halogen",
  rows: [{ of: "current", value: CURRENT_EXPONENT }],
};
