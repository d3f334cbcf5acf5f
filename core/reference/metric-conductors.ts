import type { ReferenceRow, ReferenceTable } from "./reference-table.ts";

interface MetricConductor {
  readonly areaMm2: number;
  /** Largest resistance a compliant cable may have at 20 °C, milliohm per metre of one conductor. */
  readonly maxMohmPerM: number;
  readonly fromMemory?: true;
}

const ISO_6722 = "ISO 6722-1, conductor resistance, as printed for FL and FLR cables declared compliant";
const IEC_60228 = "IEC 60228, class 5 plain copper, maximum at 20 °C";

/**
 * Road-vehicle cable. The sizes above 16 mm² were never seen in print; where IEC 60228 class 5 lists one (25, 35, 50 …) its
 * higher maximum is used instead, so that no remembered number stands where a published one can.
 */
const ISO_6722_ROWS: readonly MetricConductor[] = [
  { areaMm2: 0.13, maxMohmPerM: 136 },
  { areaMm2: 0.22, maxMohmPerM: 84.4 },
  { areaMm2: 0.35, maxMohmPerM: 54.4 },
  { areaMm2: 0.5, maxMohmPerM: 37.1 },
  { areaMm2: 0.75, maxMohmPerM: 24.7 },
  { areaMm2: 1, maxMohmPerM: 18.5 },
  { areaMm2: 1.25, maxMohmPerM: 14.9, fromMemory: true },
  { areaMm2: 1.5, maxMohmPerM: 12.7 },
  { areaMm2: 2, maxMohmPerM: 9.42 },
  { areaMm2: 2.5, maxMohmPerM: 7.6 },
  { areaMm2: 3, maxMohmPerM: 6.15 },
  { areaMm2: 4, maxMohmPerM: 4.71 },
  { areaMm2: 5, maxMohmPerM: 3.94, fromMemory: true },
  { areaMm2: 6, maxMohmPerM: 3.14 },
  { areaMm2: 8, maxMohmPerM: 2.38, fromMemory: true },
  { areaMm2: 10, maxMohmPerM: 1.82 },
  { areaMm2: 12, maxMohmPerM: 1.52, fromMemory: true },
  { areaMm2: 16, maxMohmPerM: 1.16 },
  { areaMm2: 20, maxMohmPerM: 0.955, fromMemory: true },
  { areaMm2: 30, maxMohmPerM: 0.647, fromMemory: true },
  { areaMm2: 40, maxMohmPerM: 0.473, fromMemory: true },
  { areaMm2: 60, maxMohmPerM: 0.315, fromMemory: true },
];

const IEC_60228_ROWS: readonly MetricConductor[] = [
  { areaMm2: 25, maxMohmPerM: 0.78 },
  { areaMm2: 35, maxMohmPerM: 0.554 },
  { areaMm2: 50, maxMohmPerM: 0.386 },
  { areaMm2: 70, maxMohmPerM: 0.272 },
  { areaMm2: 95, maxMohmPerM: 0.206 },
  { areaMm2: 120, maxMohmPerM: 0.161 },
  { areaMm2: 150, maxMohmPerM: 0.129 },
  { areaMm2: 185, maxMohmPerM: 0.106 },
  { areaMm2: 240, maxMohmPerM: 0.0801 },
  { areaMm2: 300, maxMohmPerM: 0.0641 },
];

const BY_AREA = new Map(
  [
    ...ISO_6722_ROWS.map((listed) => ({ ...listed, source: ISO_6722 })),
    ...IEC_60228_ROWS.map((listed) => ({ ...listed, source: IEC_60228 })),
  ].map((listed) => [listed.areaMm2, listed]),
);

/** The listed conductor of exactly this nominal area, or `null`: sizes in between are not made up. */
export function metricConductor(areaMm2: number): (MetricConductor & { readonly source: string }) | null {
  return BY_AREA.get(areaMm2) ?? null;
}

export const iso6722Table: ReferenceTable = {
  id: "iso-6722",
  title: "Road-vehicle cable: largest resistance at 20 °C",
  unit: "mohm/m",
  source: ISO_6722,
  edition: "2011",
  range: "plain copper, one conductor, nominal 0.13 to 60 mm2; sizes not listed have no answer",
  rows: ISO_6722_ROWS.map(row),
};

export const iec60228Table: ReferenceTable = {
  id: "iec-60228-class-5",
  title: "Flexible conductors: largest resistance at 20 °C",
  unit: "mohm/m",
  source: IEC_60228,
  edition: "edition 3, 2004",
  range: "plain copper, one conductor, 25 to 300 mm2 (smaller sizes follow ISO 6722)",
  rows: IEC_60228_ROWS.map(row),
};

function row({ areaMm2, maxMohmPerM, fromMemory }: MetricConductor): ReferenceRow {
  return { of: `${areaMm2} mm2`, value: maxMohmPerM, ...(fromMemory ? { fromMemory } : {}) };
}
