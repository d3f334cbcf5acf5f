import { batteryQuantities } from "./batteries.ts";
import { capacityQuantities } from "./capacity.ts";
import { crimpQuantities } from "./crimps.ts";
import { fuseQuantities } from "./fuses.ts";
import { loadQuantities } from "./loads.ts";
import { networkQuantities } from "./networks.ts";
import type { Quantity } from "./quantity.ts";
import { shortCircuitQuantities } from "./short-circuits.ts";
import { voltageDropQuantities } from "./voltage-drops.ts";
import { wireQuantities } from "./wire.ts";

/** Everything the program works out that someone else has published. */
export const quantities: readonly Quantity[] = [
  ...wireQuantities,
  ...capacityQuantities,
  ...fuseQuantities,
  ...shortCircuitQuantities,
  ...crimpQuantities,
  ...batteryQuantities,
  ...voltageDropQuantities,
  ...loadQuantities,
  ...networkQuantities,
];
