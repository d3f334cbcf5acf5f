import type { ReferenceTable } from "./reference-table.ts";

const PVC_K = 115;
const CROSS_LINKED_K = 143;
/** From here up, vehicle cable is cross-linked; 105 °C cable is still PVC as a rule, and PVC stands less. */
const CROSS_LINKED_FROM_C = 125;

/** Longest short the law below holds for, s: in longer ones heat leaves the wire, and the fuse has failed its task anyway. */
export const ADIABATIC_UP_TO_S = 5;

/**
 * Heat a copper wire stands in a short without harm to its insulation, as k²·S² in A²·s; a current I may last this over I².
 * Range: up to 5 s, wire at 70 °C (PVC) or 90 °C (cross-linked, taken from 125 °C insulation up) when the short begins.
 * Source: IEC 60364-4-43 Table 43A, k = 115 and 143.
 */
export function withstandA2s(areaMm2: number, insulationC: number): number {
  const k = insulationC >= CROSS_LINKED_FROM_C ? CROSS_LINKED_K : PVC_K;
  return (k * areaMm2) ** 2;
}

export const shortCircuitTable: ReferenceTable = {
  id: "short-circuit",
  title: "Heat a copper wire stands in a short",
  unit: "A·s^½/mm2",
  source: "IEC 60364-4-43 Table 43A; IEC 60364-5-54 clause 543.1.2",
  edition: null,
  range: "shorts up to 5 s; withstand is k²·S²",
  rows: [
    { of: "k of PVC, from 70 to 160 °C", value: PVC_K, note: "used below 125 °C insulation" },
    { of: "k of cross-linked, from 90 to 250 °C", value: CROSS_LINKED_K, note: "used from 125 °C insulation up" },
  ],
};
