import type { NetPart } from "../../netlist/index.ts";
import type { SourceElement } from "../../parts/index.ts";
import { formatNumber } from "../../units/index.ts";
import type { PaperSource } from "../paper.ts";
import { partName, terminalName, wireName } from "../words/index.ts";

/** Something to find out on the vehicle before anything is cut. */
export interface MeasureRow {
  readonly what: string;
  readonly how: string;
  readonly expect: string;
}

export interface MeasureGroup {
  readonly title: string;
  readonly rows: readonly MeasureRow[];
}

/** Every gap and guess of the drawing, grouped by where one looks; empty groups are left out. */
export function measureGroups(source: PaperSource): MeasureGroup[] {
  const groups = [
    { title: "Wires of the vehicle", rows: source.netlist.parts.flatMap(feedRows) },
    { title: "Battery and charging", rows: [...source.netlist.parts.flatMap(batteryRows), ...systemRows(source)] },
    { title: "The vehicle's metal", rows: source.netlist.parts.flatMap(surfaceRows) },
    { title: "Our own wires", rows: wireRows(source) },
    { title: "Not stated on the drawing", rows: gapRows(source) },
  ];
  return groups.filter(({ rows }) => rows.length > 0);
}

function feedRows(part: NetPart): MeasureRow[] {
  const feed = part.kind.facts?.(part.settings).feed;
  if (!feed) return [];
  const what = partName(part.part);
  const element = part.elements.map(({ spec }) => spec).find((spec): spec is SourceElement => spec.type === "source");
  const volts = element
    ? `${formatNumber(element.restV)} V engine off, ${formatNumber(element.runningV)} V running`
    : "";
  const isAlways = element?.when === null;
  return [
    { what, how: `${feed.measured ? "" : "NOT MEASURED: "}volts while it is on`, expect: volts },
    ...(isAlways ? [] : [{ what, how: "volts while it is off, key out and key on", expect: "0.0 V" }]),
    ...(element?.fuseA === null
      ? [{ what, how: "which fuse of the vehicle feeds it, and its rating", expect: "? A" }]
      : []),
    ...(feed.spareA === null ? [{ what, how: "how much more the vehicle's maker allows on it", expect: "? A" }] : []),
    ...(feed.monitored === "unknown" ? [{ what, how: "does a module watch it for failed bulbs?", expect: "no" }] : []),
    ...(feed.pulsed === "unknown"
      ? [{ what, how: "is it pulsed to dim it? Meter flickers, or an old bulb tells", expect: "no" }]
      : []),
  ];
}

function batteryRows(part: NetPart): MeasureRow[] {
  const battery = part.kind.facts?.(part.settings).battery;
  if (!battery) return [];
  const what = partName(part.part);
  const element = part.elements.map(({ spec }) => spec).find((spec): spec is SourceElement => spec.type === "source");
  const drawn = battery.sensor ? "yes, as drawn" : "none, as drawn";
  return [
    { what, how: "volts after an hour at rest", expect: element ? `${formatNumber(element.restV)} V` : "" },
    { what, how: "volts with the engine running", expect: element ? `${formatNumber(element.runningV)} V` : "" },
    { what, how: "is there a battery sensor or a breaker on the negative post?", expect: drawn },
    ...(battery.capacityAh === null ? [{ what, how: "capacity on its label", expect: "? Ah" }] : []),
  ];
}

function systemRows({ netlist }: PaperSource): MeasureRow[] {
  const { alternatorA, baseLoadA } = netlist.system;
  return [
    ...(alternatorA === null ? [{ what: "Alternator", how: "rated output on its plate", expect: "? A" }] : []),
    ...(baseLoadA === null
      ? [{ what: "Vehicle", how: "amps it draws by itself with the engine running (clamp)", expect: "? A" }]
      : []),
  ];
}

function surfaceRows(part: NetPart): MeasureRow[] {
  const { surface } = part.kind.facts?.(part.settings) ?? {};
  if (surface === undefined || surface === "clean") return [];
  const how =
    surface === "painted"
      ? "painted: find or make a bright spot"
      : "is the metal bare and clean? Drop to battery negative under load";
  return [{ what: partName(part.part), how, expect: "under 0.1 V" }];
}

function wireRows({ netlist }: PaperSource): MeasureRow[] {
  return netlist.wires.flatMap((wire): MeasureRow[] => {
    const what = `${wireName(wire.wire)}, ${terminalName(wire.from)} to ${terminalName(wire.to)}`;
    return [
      ...(wire.wire.measured === false
        ? [{ what, how: "NOT MEASURED: that it is the wire it is taken for", expect: "" }]
        : []),
      ...(wire.wire.metres === undefined ? [{ what, how: "length along the route", expect: "? m" }] : []),
      ...(wire.wire.size === undefined ? [{ what, how: "size, printed on it or by its strands", expect: "?" }] : []),
    ];
  });
}

/** What the rules could not check; gaps that already stand above are not said twice. */
function gapRows({ report, netlist }: PaperSource): MeasureRow[] {
  const isSaid = (at: string) => {
    const wire = netlist.wireAt.get(at)?.wire;
    return wire !== undefined && (wire.metres === undefined || wire.size === undefined);
  };
  return report.snags
    .filter(({ level, at }) => level === "cant-check" && !isSaid(at[0] ?? ""))
    .map(({ text, at }) => ({ what: (at[0] ?? "").toUpperCase(), how: text, expect: "" }));
}
