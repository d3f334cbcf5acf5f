import type { Netlist } from "../netlist/index.ts";
import type { Standing, Unproved } from "../positions/index.ts";
import { daysToHalf, restDeliveries, type SituationReading } from "../readings/index.ts";
import type { ReportSummary } from "./types.ts";

/** What is drawn with everything at rest, how long the battery lasts, and what could not be proved. */
export function summaryOf(netlist: Netlist, rest: SituationReading, standing: Standing): ReportSummary {
  const deliveries = restDeliveries(netlist, rest);
  return {
    restDrainA: rest.settled ? deliveries.reduce((sum, { amps }) => sum + amps, 0) : null,
    daysToHalf: daysToHalf(deliveries),
    combinations: standing.combinations,
    unproved: standing.unproved.map(unprovedInWords),
  };
}

function unprovedInWords({ controls, why, when }: Unproved): string {
  if (why === "unsettled") return `Nothing is said where the relays never settle: ${when}.`;
  return `Too many positions of ${controls.join(", ")} to look at each: relays there count as free to stand either way.`;
}
