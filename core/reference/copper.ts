import type { ReferenceTable } from "./reference-table.ts";

/** Ohm·mm²/m of annealed copper at 20 °C. IEC 60028: 1.7241e-8 ohm·m. */
export const COPPER_OHM_MM2_PER_M = 0.017241;
/** Per kelvin, at 20 °C, constant mass. IEC 60028. */
const COPPER_PER_KELVIN = 0.00393;

/**
 * How many times its resistance at 20 °C a copper conductor has at `conductorC` (conductor, not air).
 * Range: linear, good to about 1 % from -40 to 150 °C. Source: IEC 60028.
 */
export function copperTemperatureFactor(conductorC: number): number {
  return 1 + COPPER_PER_KELVIN * (conductorC - 20);
}

export const copperTable: ReferenceTable = {
  id: "copper",
  title: "Annealed copper",
  unit: "ohm·m; 1/K",
  source: "IEC 60028, International standard of resistance for copper",
  edition: "1925",
  range: "DC, soft copper, conductor from -40 to 150 °C",
  rows: [
    { of: "resistivity at 20 °C, ohm·m", value: COPPER_OHM_MM2_PER_M * 1e-6 },
    { of: "temperature coefficient at 20 °C, 1/K", value: COPPER_PER_KELVIN },
  ],
};
