import type { Document } from "../document/index.ts";
import { buildNetlist, type Netlist } from "../netlist/index.ts";
import { readSituations, type SituationReading } from "../readings/index.ts";
import { longestOpeningS } from "../reference/index.ts";
import type { Fault } from "./fault.ts";
import { faultedNet, type FaultedNet } from "./faulted-net.ts";
import { tellingReading, type TellingReading } from "./telling-reading.ts";

/** A load as the fault leaves it. */
export interface LoadChange {
  readonly part: string;
  readonly wasOn: boolean;
  readonly isOn: boolean;
  readonly volts: number | null;
}

/**
 * The device that opens first, and when at the latest; `withinS` null: its table does not say, or it is the vehicle's own fuse on a
 * feed (`at` is the feed), of which no more than the rating is known.
 */
export interface Stop {
  readonly at: string;
  readonly amps: number;
  readonly ratingA: number;
  readonly withinS: number | null;
}

export interface DrillSituation {
  readonly id: string;
  readonly name: string;
  readonly settled: boolean;
  /** Loads that do something else than before: out, on, or glowing. */
  readonly changes: readonly LoadChange[];
  readonly works: readonly string[];
  /** Not on, and yet over 1 V across it. */
  readonly glows: readonly string[];
  /** Sources or feeds that current is driven into. */
  readonly backfed: readonly string[];
  /** Through the place that touches the frame; `null` when nothing does. */
  readonly faultA: number | null;
  readonly stop: Stop | null;
}

export interface Drill {
  readonly fault: Fault;
  readonly situations: readonly DrillSituation[];
  /** The meter reading that best tells this fault from a sound circuit and from the other faults; `null`: none does. */
  readonly reading: TellingReading | null;
}

/** What a fault does in every situation, and how to find it with a meter among `others`. */
export function runDrill(document: Document, fault: Fault, others: readonly Fault[] = []): Drill {
  const sound = readSituations(buildNetlist(document));
  const faulted = faultedNet(document, fault);
  const broken = readSituations(faulted.netlist);
  const suspects = others.filter((other) => other.mode !== fault.mode || other.at !== fault.at);
  return {
    fault,
    situations: broken.map((after, at) => drillSituation(faulted, sound[at]!, after)),
    reading: tellingReading(
      sound,
      broken,
      suspects.map((other) => ({ fault: other, readings: readSituations(faultedNet(document, other).netlist) })),
    ),
  };
}

/** A load this far from nothing shows it: a lamp glows, a motor hums. Volts. */
const GLOWS_FROM_V = 1;
/** Less than this is leakage, not backfeed. Amps. */
const DRIVEN_FROM_A = 1e-3;

function drillSituation(
  { netlist, shortBranch }: FaultedNet,
  before: SituationReading,
  after: SituationReading,
): DrillSituation {
  const loads = Object.entries(after.parts)
    .filter(([, reading]) => reading.on !== undefined)
    .map(([part, reading]): LoadChange => {
      return { part, wasOn: before.parts[part]?.on === true, isOn: reading.on === true, volts: reading.volts ?? null };
    });
  const glowing = loads.filter(({ isOn, volts }) => !isOn && Math.abs(volts ?? 0) > GLOWS_FROM_V);
  return {
    id: after.id,
    name: after.name,
    settled: after.settled,
    changes: loads.filter((load) => load.wasOn !== load.isOn || glowing.includes(load)),
    works: loads.filter(({ isOn }) => isOn).map(({ part }) => part),
    glows: glowing.map(({ part }) => part),
    backfed: netlist.elements
      .filter(
        ({ spec, branch }) =>
          spec.type === "source" && after.settled && after.solution.branchA[branch]! < -DRIVEN_FROM_A,
      )
      .map(({ part }) => part.part.id),
    faultA: shortBranch === null || !after.settled ? null : Math.abs(after.solution.branchA[shortBranch]!),
    stop: after.settled ? firstToOpen(netlist, after) : null,
  };
}

/** Of all devices over their rating the one whose table promises to open soonest; without a promise, the most overloaded. */
function firstToOpen(netlist: Netlist, { solution }: SituationReading): Stop | null {
  const stops = netlist.elements.flatMap(({ spec, part: { part }, branch }): Stop[] => {
    if (branch < 0) return [];
    const amps = Math.abs(solution.branchA[branch]!);
    if (spec.type === "source") {
      const ratingA = spec.fuseA ?? Infinity;
      return amps > ratingA ? [{ at: part.id, amps, ratingA, withinS: null }] : [];
    }
    if (spec.type !== "protection" || spec.ratingA === null || amps <= spec.ratingA) return [];
    const at = spec.terminal ? `${part.id}.${spec.terminal}` : part.id;
    return [{ at, amps, ratingA: spec.ratingA, withinS: longestOpeningS(spec.gates, spec.ratingA, amps) }];
  });
  const sooner = (one: Stop, other: Stop) =>
    (one.withinS ?? Infinity) - (other.withinS ?? Infinity) || other.amps / other.ratingA - one.amps / one.ratingA;
  return stops.sort((one, other) => sooner(one, other) || one.at.localeCompare(other.at))[0] ?? null;
}
