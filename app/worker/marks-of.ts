import type { Netlist } from "../../core/netlist/index.ts";
import type { Report, ReportTerminal } from "../../core/report/index.ts";
import type { Snag } from "../../core/rules/index.ts";
import { PART_FLAG, STANDING, TERMINAL_FLAG, WIRE_FLAG, type BoardMarks } from "../board/marks.ts";
import { groundNodes } from "./ground-nodes.ts";
import type { Present } from "./protocol.ts";

/** Above this a meter against battery negative shows a terminal live at this moment. Volts. */
const HOT_NOW_V = 1;

const STANDING_OF = {
  always: STANDING.always,
  "at-rest": STANDING.atRest,
  switched: STANDING.switched,
  never: STANDING.dead,
} as const;

/** What the Board draws on terminals, wires and parts: the all-positions report and the present situation, packed. */
export function marksOf(revision: number, netlist: Netlist, report: Report, present: Present): BoardMarks {
  const isGround = groundNodes(netlist);
  const named = namedBy(report.snags);
  const hotNow = netlist.terminals.map(({ address }) => Math.abs(present.terminals[address]?.volts ?? 0) >= HOT_NOW_V);
  const terminals = netlist.terminals.map(({ address, node }, index) => {
    const standing = report.terminals[address];
    return (
      standingOf(standing, isGround[node] === 1) |
      (standing?.via === "load" ? TERMINAL_FLAG.viaLoad : 0) |
      (hotNow[index] ? TERMINAL_FLAG.hotNow : 0) |
      (standing?.bare && named.has(address) ? TERMINAL_FLAG.bareSnag : 0)
    );
  });
  const amps = netlist.wires.map(({ wire }) => present.wires[wire.id]?.amps ?? 0);
  const wireFlags = netlist.wires.map(({ wire, from, to, capacityA }, index) => {
    const level = named.get(wire.id);
    return (
      (capacityA !== null && Math.abs(amps[index]!) > capacityA ? WIRE_FLAG.overload : 0) |
      (report.wires[wire.id]?.guard === null ? WIRE_FLAG.unguarded : 0) |
      (hotNow[from.index] || hotNow[to.index] ? WIRE_FLAG.hotNow : 0) |
      (level === "stop" || level === "fix" ? WIRE_FLAG.snag : 0)
    );
  });
  const parts = netlist.parts.map(({ part, terminals: own }) => {
    const reading = present.parts[part.id];
    const levels = [part.id, ...own.map((terminal) => terminal.address)].map((place) => named.get(place));
    return (
      (reading?.on ? PART_FLAG.on : 0) |
      (reading?.pulledIn ? PART_FLAG.pulledIn : 0) |
      (levels.includes("stop") ? PART_FLAG.stop : 0) |
      (levels.includes("fix") ? PART_FLAG.fix : 0)
    );
  });
  return {
    revision,
    terminals: Uint8Array.from(terminals),
    wires: Float32Array.from(amps),
    wireFlags: Uint8Array.from(wireFlags),
    parts: Uint8Array.from(parts),
    positions: present.positions,
  };
}

function standingOf(standing: ReportTerminal | undefined, isGround: boolean): number {
  if (standing === undefined) return STANDING.unknown;
  return standing.hot === "never" && isGround ? STANDING.ground : STANDING_OF[standing.hot];
}

/** The worst level of a snag that shows at each place. Snags come worst first. */
function namedBy(snags: readonly Snag[]): ReadonlyMap<string, Snag["level"]> {
  const named = new Map<string, Snag["level"]>();
  for (const snag of snags) for (const place of snag.at) if (!named.has(place)) named.set(place, snag.level);
  return named;
}
