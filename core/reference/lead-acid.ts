import type { ReferenceTable } from "./reference-table.ts";

/** Rested volts of a 12 V battery by charge left, fullest first. */
const REST = [
  { percent: 100, volts: 12.65 },
  { percent: 75, volts: 12.45 },
  { percent: 50, volts: 12.24 },
  { percent: 25, volts: 12.06 },
  { percent: 0, volts: 11.89 },
] as const;

/**
 * Charge left in a rested lead-acid battery, percent, straight line between the listed voltages; 0 and 100 are the ends.
 * Range: flooded, hours after charging, near 27 °C; published tables differ by up to 0.1 V at half charge.
 * Source: BCI state-of-charge table. A 24 V battery is two in series.
 */
export function leadAcidChargePercent(restV: number, nominalV: 12 | 24): number {
  const volts = (restV * 12) / nominalV;
  const below = REST.findIndex((row) => row.volts <= volts);
  const low = REST[below];
  const high = REST[below - 1];
  if (!low) return 0;
  if (!high) return 100;
  return low.percent + ((high.percent - low.percent) * (volts - low.volts)) / (high.volts - low.volts);
}

export const leadAcidTable: ReferenceTable = {
  id: "lead-acid-rest",
  title: "Rested lead-acid battery, 12 V: volts by charge left",
  unit: "V",
  source: "Battery Council International (BCI) state-of-charge table, as reproduced by a battery maker",
  edition: "2000s",
  range: "flooded lead-acid, rested, 26.7 °C; a 24 V battery has twice the volts",
  rows: REST.map(({ percent, volts }) => ({ of: `${percent} % charged`, value: volts })),
};
