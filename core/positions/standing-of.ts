import { wireSurroundings } from "../document/index.ts";
import type { NetElement, Netlist, NetWire } from "../netlist/index.ts";
import { letThroughA2s, longestOpeningS, withstandA2s } from "../reference/index.ts";
import { faultCurrents } from "./faults.ts";
import { guardsOf, type WireGuard } from "./guards.ts";
import { liveMap, type LiveMap } from "./live-map.ts";
import type { Guard, Standing, TerminalStanding, WireStanding } from "./types.ts";

/** Everything that holds over every combination of the controls: what is hot, guarded, and how hard a short would be. */
export function standingOf(netlist: Netlist): Standing {
  const map = liveMap(netlist);
  const faults = faultCurrents(netlist, map.faultCases);
  const guards = guardsOf(netlist);
  const devices = devicesByName(netlist);
  return {
    terminals: netlist.terminals.map(({ node, cover }): TerminalStanding => {
      const faultA = faultAt(map, faults, node);
      const guard = guards.nodes[node];
      const clearsWithinS = guard && faultA !== null ? clearingTime(guard, faultA, devices) : null;
      return { ...map.heat[node]!, bare: cover === "bare", guard, faultA, clearsWithinS };
    }),
    wires: netlist.wires.map((wire, at) => wireStanding(netlist, wire, guards.wires[at]!, map, faults, devices)),
    samples: map.samples,
    isSampled: map.isSampled,
    combinations: map.combinations,
    unproved: map.unproved,
  };
}

function faultAt(map: LiveMap, faults: Float64Array, node: number): number | null {
  return map.heat[node]!.via === "direct" && faults[node]! >= 0 ? faults[node]! : null;
}

function wireStanding(
  netlist: Netlist,
  wire: NetWire,
  guard: WireGuard,
  map: LiveMap,
  faults: Float64Array,
  devices: ReadonlyMap<string, NetElement>,
): WireStanding {
  const fromA = faultAt(map, faults, wire.from.node);
  const toA = faultAt(map, faults, wire.to.node);
  const faultA = fromA === null || toA === null ? null : Math.min(fromA, toA);
  const clearsWithinS = guard.guard && faultA !== null ? clearingTime(guard.guard, faultA, devices) : null;
  return {
    capacityA: wire.capacityA,
    guard: guard.guard,
    unguardedM: guard.unguardedM,
    ways: guard.ways,
    faultA,
    clearsWithinS,
    heatRatio: heatRatio(netlist, wire, guard.guard, faultA, devices),
  };
}

/** Protective elements by the name a guard gives them. */
function devicesByName(netlist: Netlist): Map<string, NetElement> {
  return new Map(
    netlist.elements.flatMap((element): [string, NetElement][] => {
      const { spec, part } = element;
      if (spec.type !== "protection") return [];
      return [[spec.terminal ? `${part.part.id}.${spec.terminal}` : part.part.id, element]];
    }),
  );
}

function clearingTime(guard: Guard, faultA: number, devices: ReadonlyMap<string, NetElement>): number | null {
  const device = devices.get(guard.at)?.spec;
  if (device?.type !== "protection" || guard.ratingA === null) return null;
  return longestOpeningS(device.gates, guard.ratingA, faultA);
}

/** Most heat the guard may let through in the short, over what the conductor stands. */
function heatRatio(
  netlist: Netlist,
  { wire, areaMm2 }: NetWire,
  guard: Guard | null | undefined,
  faultA: number | null,
  devices: ReadonlyMap<string, NetElement>,
): number | null {
  const device = guard ? devices.get(guard.at)?.spec : undefined;
  if (device?.type !== "protection" || guard?.ratingA == null || faultA === null || areaMm2 === null) return null;
  const heatA2s = letThroughA2s(device.gates, guard.ratingA, faultA);
  return heatA2s === null ? null : heatA2s / withstandA2s(areaMm2, wireSurroundings(wire, netlist.system).insulationC);
}
