import type { NetElement, Netlist } from "../netlist/index.ts";
import { factsOf } from "../parts/index.ts";
import type { SituationReading } from "./types.ts";

/** What a battery or feed delivers with everything at rest, amps. */
export interface Delivery {
  readonly source: NetElement;
  readonly amps: number;
}

/** Less than this is rounding, not drain. Amps. */
const NO_CURRENT_A = 1e-6;
const HOURS = 24;

/** Sources that deliver at rest, most first; current into a battery is not taken off. Empty when rest does not settle. */
export function restDeliveries(netlist: Netlist, { settled, solution }: SituationReading): Delivery[] {
  if (!settled) return [];
  return netlist.elements
    .filter(({ spec }) => spec.type === "source")
    .map((source) => ({ source, amps: solution.branchA[source.branch]! }))
    .filter(({ amps }) => amps > NO_CURRENT_A)
    .toSorted((one, other) => other.amps - one.amps);
}

/** Days until the first battery has given half of its capacity; `null` without drain or with a capacity nobody stated. */
export function daysToHalf(deliveries: readonly Delivery[]): number | null {
  const days = deliveries.flatMap(({ source, amps }) => {
    const { battery } = factsOf(source.part.part);
    return battery ? [battery.capacityAh === null ? null : battery.capacityAh / 2 / amps / HOURS] : [];
  });
  return days.length === 0 || days.includes(null) ? null : Math.min(...days.map(Number));
}
