import { leadAcidChargePercent } from "../../core/reference/index.ts";
import type { Quantity } from "./quantity.ts";

/** Percent, volts: BCI table as reproduced by discoverbattery.com and studylib.net/doc/18054160. */
const LEAD_ACID = [
  [100, 12.65],
  [75, 12.45],
  [50, 12.24],
  [25, 12.06],
  [0, 11.89],
] as const;

export const batteryQuantities: readonly Quantity[] = [
  {
    quantity: "charge left in a rested lead-acid battery",
    unit: "percent of charge",
    limit: 1e-9,
    because: "a look-up at the listed voltages",
    source: "BCI state-of-charge table",
    checks: LEAD_ACID.flatMap(([expected, volts]) => [
      { of: `${volts} V`, expected, got: leadAcidChargePercent(volts, 12) },
      { of: `${volts * 2} V of 24 V`, expected, got: leadAcidChargePercent(volts * 2, 24) },
    ]),
  },
];
