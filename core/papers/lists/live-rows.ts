import type { NetTerminal } from "../../netlist/index.ts";
import type { PaperSource } from "../paper.ts";
import { terminalName, wireName } from "../words/index.ts";
import { conductionOf, type Conduction } from "./conduction.ts";
import { deviceRows, type DeviceRow } from "./device-rows.ts";
import { isHotAtRest, wireHot } from "./standing.ts";

/** One thing that is live with everything off. */
export interface LiveRow {
  readonly name: string;
  /** Ends of a wire, or what holds at a bare terminal. */
  readonly about: string;
  readonly guard: string;
  readonly kill: string;
  readonly isBare: boolean;
}

/** Bare metal that is live with everything off first, then every wire and every covered end with no wire on it. */
export function liveRows(source: PaperSource): LiveRow[] {
  const { netlist, report } = source;
  const atRest = conductionOf(source, "rest");
  const kills = killFinder(source, atRest);
  const ends = netlist.terminals.filter(
    (terminal) =>
      isHotAtRest(report.terminals[terminal.address]?.hot) &&
      terminal.cover !== "cavity" &&
      (report.terminals[terminal.address]?.bare || terminal.wires.length === 0),
  );
  const terminals = ends.map((terminal): LiveRow => {
    const isBare = report.terminals[terminal.address]?.bare === true;
    const about = `${isBare ? "BARE METAL" : "covered"}${terminal.wires.length === 0 ? ", no wire on it" : ""}`;
    return {
      name: terminalName(terminal),
      about,
      guard: endGuard(terminal, source),
      kill: kills(terminal.node),
      isBare,
    };
  });
  const wires = netlist.wires
    .filter((wire) => isHotAtRest(wireHot(wire, source)))
    .map((wire): LiveRow => ({
      name: wireName(wire.wire),
      about: `${terminalName(wire.from)} to ${terminalName(wire.to)}`,
      guard: wireGuard(wire.wire.id, source),
      kill: kills(wire.from.node),
      isBare: false,
    }));
  return [...terminals.filter(({ isBare }) => isBare), ...wires, ...terminals.filter(({ isBare }) => !isBare)];
}

function wireGuard(id: string, source: PaperSource): string {
  const guard = source.report.wires[id]?.guard;
  if (guard === undefined) return "";
  if (guard === null) return "NONE";
  return deviceRows(source).find(({ address }) => address === guard.at)?.name ?? guard.at;
}

/** What guards the wires on a terminal, or those on the part's other live ends where it has none itself. */
function endGuard(terminal: NetTerminal, source: PaperSource): string {
  const { netlist, report } = source;
  const own = terminal.wires.length > 0 ? [terminal] : terminal.part.terminals;
  const wires = own.filter(({ address }) => isHotAtRest(report.terminals[address]?.hot)).flatMap((each) => each.wires);
  const guards = new Set(wires.map((number) => wireGuard(netlist.wires[number]!.wire.id, source)));
  return guards.has("NONE") ? "NONE" : [...guards].filter((guard) => guard !== "").join(" or ") || "NONE";
}

/** How to make a node dead: any one device that does it alone, else all batteries off. */
function killFinder(source: PaperSource, atRest: Conduction): (node: number) => string {
  const devices = deviceRows(source).filter(({ element }) => element.spec.closed);
  const left = devices.map((device) => ({ device, fed: atRest.fedWithout([device.element], true) }));
  const batteries = source.netlist.parts.filter(({ kind, settings }) => kind.facts?.(settings).battery !== undefined);
  return (node) => {
    const killers = left.filter(({ fed }) => !fed.has(node)).map(({ device }) => killWords(device));
    if (killers.length > 0) return killers.at(-1)!;
    const isFeedLive = atRest.fedWithout(batteries, true).has(node);
    if (isFeedLive) return "fed by the vehicle's own wire: find its fuse";
    return batteries.length > 1 ? "all batteries' negatives off" : "battery negative off";
  };
}

function killWords({ name, element }: DeviceRow): string {
  return `${element.spec.recloses ? "open" : "pull"} ${name}`;
}
