import { withstandA2s } from "../../core/reference/index.ts";
import type { Quantity } from "./quantity.ts";

/** mm², PVC and cross-linked k²S² in 10⁶ A²s: electrical-installation.org, Fig. G53 after IEC 60364-4-43. */
const WITHSTAND = [
  [1.5, 0.0297, 0.046],
  [2.5, 0.0826, 0.1278],
  [4, 0.2116, 0.3272],
  [6, 0.4761, 0.7362],
  [10, 1.3225, 2.045],
  [16, 3.3856, 5.235],
  [25, 8.2656, 12.7806],
  [35, 16.2006, 25.05],
] as const;

/** Amps, seconds, smallest mm² by k 115. Printed in: Basic Electrical Installation Work p. 251 (first two); engx.theiet.org 30488. */
const SMALLEST = [
  [200, 0.4, 1.1],
  [90, 0.4, 0.49],
  [120, 0.4, 0.66],
  [328, 0.4, 1.8],
] as const;

const PVC_C = 70;
const CROSS_LINKED_C = 125;

export const shortCircuitQuantities: readonly Quantity[] = [
  {
    quantity: "heat a wire stands in a short",
    unit: "%",
    limit: 0.4,
    because: "the guide cuts off the last digit",
    source: "Electrical Installation Guide Fig. G53, after IEC 60364-4-43",
    checks: WITHSTAND.flatMap(([mm2, pvc, crossLinked]) => [
      { of: `${mm2} mm2 PVC`, expected: pvc, got: withstandA2s(mm2, PVC_C) / 1e6 },
      { of: `${mm2} mm2 cross-linked`, expected: crossLinked, got: withstandA2s(mm2, CROSS_LINKED_C) / 1e6 },
    ]),
  },
  {
    quantity: "smallest wire for a short",
    unit: "mm2",
    limit: 0.01,
    because: "printed to 0.01 mm2",
    source: "textbook Basic Electrical Installation Work p. 251; an engineering institution's forum",
    checks: SMALLEST.map(([amps, seconds, expected]) => ({
      of: `${amps} A for ${seconds} s`,
      expected,
      got: Math.sqrt((amps ** 2 * seconds) / withstandA2s(1, PVC_C)),
    })),
  },
];
