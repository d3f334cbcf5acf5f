import type { NetElement, NetTerminal, NetWire } from "../../netlist/index.ts";
import type { Protection } from "../../parts/index.ts";
import type { ReportSituation } from "../../report/index.ts";
import { largestRatingA } from "../../reference/index.ts";
import { bothLengths, ownLength, partName, terminalName } from "../words/index.ts";
import type { PaperSource } from "../paper.ts";

/** A fuse, breaker or way of a block, with what must be known to replace it. */
export interface DeviceRow {
  /** As reports name it: "f1", "blk.2". */
  readonly address: string;
  /** "F1 Lamps", "BLK · 2". */
  readonly name: string;
  readonly element: NetElement<Protection>;
  /** Where it is, in words and both units; of a way of a block, which way. */
  readonly place: string;
  /** The same in few words: "0.15 m from BAT · +"; `null` where the name says it, or nothing is known. */
  readonly near: string | null;
  readonly ratingA: number | null;
  /** Largest fuse that may ever stand in its place: what every wire and holder it guards can carry. `null`: not known. */
  readonly largestA: number | null;
  /** Wires this device stands between them and a source. */
  readonly guards: readonly NetWire[];
}

/** Every protective device of the drawing, in its order. */
export function deviceRows(source: PaperSource): DeviceRow[] {
  return source.netlist.elements.flatMap((element) => (isProtection(element) ? [deviceRow(element, source)] : []));
}

function isProtection(element: NetElement): element is NetElement<Protection> {
  return element.spec.type === "protection";
}

function deviceRow(element: NetElement<Protection>, source: PaperSource): DeviceRow {
  const { part, spec } = element;
  const address = spec.terminal === "" ? part.part.id : `${part.part.id}.${spec.terminal}`;
  const guards = source.netlist.wires.filter(({ wire }) => source.report.wires[wire.id]?.guard?.at === address);
  return {
    address,
    name: spec.terminal === "" ? partName(part.part) : `${partName(part.part)} · ${spec.terminal}`,
    element,
    place: placeOf(element, guards, source),
    near: nearOf(element, guards, source),
    ratingA: spec.ratingA,
    largestA: largestOf(element, guards),
    guards,
  };
}

/**
 * The standard rating at or under what the weakest guarded wire and the holder carry; where nothing is known to be guarded, no
 * more than is drawn. `null` when a guarded wire's limit is unknown.
 */
function largestOf({ spec }: NetElement<Protection>, guards: readonly NetWire[]): number | null {
  if (guards.length === 0) return spec.ratingA;
  const limits = guards.map(({ capacityA }) => capacityA);
  if (limits.includes(null)) return null;
  const limitA = Math.min(...limits.map((limit) => limit ?? 0), spec.holderA ?? Infinity);
  return (spec.gates === null ? null : largestRatingA(spec.gates, limitA)) ?? Math.floor(limitA * 10 + 1e-9) / 10;
}

/** Where to find it: along the wire that feeds it. */
function placeOf(element: NetElement<Protection>, guards: readonly NetWire[], source: PaperSource): string {
  const { spec, part } = element;
  if (spec.terminal !== "") return `way ${spec.terminal} of ${partName(part.part)}`;
  const feed = feedOf(element, guards, source);
  if (!feed) return "not wired";
  const length = bothLengths(feed.wire.wire.metres, source.netlist.system.sizes);
  return `${length === "not stated" ? "distance not stated" : length} from ${terminalName(feed.other)}`;
}

function nearOf(element: NetElement<Protection>, guards: readonly NetWire[], source: PaperSource): string | null {
  const feed = element.spec.terminal === "" ? feedOf(element, guards, source) : null;
  if (!feed) return null;
  const { part, terminal } = feed.other;
  const place = `${part.part.id.toUpperCase()}${part.terminals.length === 1 ? "" : ` · ${terminal.name}`}`;
  const { metres } = feed.wire.wire;
  if (metres === undefined) return `fed from ${place}`;
  return `${ownLength(metres, source.netlist.system.sizes)} from ${place}`;
}

/** The wire that feeds a device, and what it comes from. */
function feedOf({ spec, part }: NetElement<Protection>, guards: readonly NetWire[], source: PaperSource) {
  const sides = part.terminals.filter(({ terminal }) => terminal.name === spec.a || terminal.name === spec.b);
  const feeds = sides.flatMap((side) => side.wires.map((number) => ({ side, wire: source.netlist.wires[number]! })));
  const feed = feeds.find(({ wire }) => !guards.includes(wire)) ?? feeds[0];
  if (!feed) return null;
  const other: NetTerminal = feed.wire.from === feed.side ? feed.wire.to : feed.wire.from;
  return { wire: feed.wire, other };
}

/** What a device carries in a situation, amps and percent of its rating; `null`: unsettled or unknown. */
export function deviceAmps(
  { element }: DeviceRow,
  readings: ReportSituation,
): { readonly amps: number | null; readonly loadPercent: number | null } {
  const { spec, part } = element;
  const reading = readings.parts[part.part.id];
  const way = reading?.ways?.[spec.terminal || spec.b] ?? reading;
  return { amps: way?.amps ?? null, loadPercent: way?.loadPercent ?? null };
}
