import type { Netlist } from "../netlist/index.ts";
import type { Standing, Unproved } from "../positions/index.ts";
import type { SituationReading } from "../readings/index.ts";
import type { ReportSummary } from "./types.ts";

/** What is drawn with everything at rest, how long the battery lasts, and what could not be proved. */
export function summaryOf(netlist: Netlist, rest: SituationReading, standing: Standing): ReportSummary {
  return {
    restDrainA: restDrain(netlist, rest),
    daysToHalf: daysToHalf(netlist, rest),
    combinations: standing.combinations,
    unproved: standing.unproved.map(unprovedInWords),
  };
}

/** What batteries and feeds deliver at rest, amps; current into a battery is not taken off. `null` when rest does not settle. */
function restDrain(netlist: Netlist, rest: SituationReading): number | null {
  if (!rest.settled) return null;
  return deliveries(netlist, rest).reduce((sum, { amps }) => sum + amps, 0);
}

/** Days until the first battery has given half of its capacity; `null` without drain or with a capacity nobody stated. */
function daysToHalf(netlist: Netlist, rest: SituationReading): number | null {
  if (!rest.settled) return null;
  const days = deliveries(netlist, rest).flatMap(({ amps, capacityAh }) => {
    if (capacityAh === undefined || amps === 0) return [];
    return [capacityAh === null ? null : capacityAh / 2 / amps / 24];
  });
  return days.length === 0 || days.includes(null) ? null : Math.min(...days.map(Number));
}

/** Less than this is rounding, not drain: amps. */
const NO_CURRENT_A = 1e-9;

function deliveries(
  netlist: Netlist,
  rest: SituationReading,
): { amps: number; capacityAh: number | null | undefined }[] {
  return netlist.elements
    .filter(({ spec }) => spec.type === "source")
    .map(({ part, branch }) => {
      const amps = rest.solution.branchA[branch]!;
      return { amps: amps > NO_CURRENT_A ? amps : 0, capacityAh: part.kind.facts?.(part.settings).battery?.capacityAh };
    });
}

function unprovedInWords({ controls, why, when }: Unproved): string {
  if (why === "unsettled") return `Nothing is said where the relays never settle: ${when}.`;
  return `Too many positions of ${controls.join(", ")} to look at each: relays there count as free to stand either way.`;
}
