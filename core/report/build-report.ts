import type { Netlist } from "../netlist/index.ts";
import type { Standing } from "../positions/index.ts";
import type { SituationReading } from "../readings/index.ts";
import { referenceTables } from "../reference/index.ts";
import type { Snag } from "../rules/index.ts";
import { summaryOf } from "./summary.ts";
import type { Report, ReportWire } from "./types.ts";

/** Everything found, as plain JSON: the public answer. */
export function buildReport(
  netlist: Netlist,
  situations: readonly SituationReading[],
  standing: Standing,
  snags: readonly Snag[],
): Report {
  const { capacityTable } = netlist.system;
  const table = referenceTables.find(({ id }) => id === `capacity-${capacityTable}`)!;
  return {
    format: "groundstrap-report",
    version: 1,
    capacityTable: { id: capacityTable, title: table.title, source: table.source },
    situations: Object.fromEntries(
      situations.map(({ id, name, settled, residualA, terminals, wires, parts }) => [
        id,
        { name, settled, residualA, terminals, wires, parts },
      ]),
    ),
    terminals: Object.fromEntries(
      netlist.terminals.map(({ address }, at) => {
        const { hot, via, when, bare, faultA } = standing.terminals[at]!;
        return [address, { hot, via, when, bare, faultA }];
      }),
    ),
    wires: Object.fromEntries(netlist.wires.map(({ wire }, at) => [wire.id, wireReport(standing, at)])),
    summary: summaryOf(netlist, situations[0]!, standing),
    snags,
  };
}

/** A return has no `guard` key at all: there is nothing for a device to stand between. */
function wireReport(standing: Standing, at: number): ReportWire {
  const { capacityA, guard, unguardedM, faultA, clearsWithinS } = standing.wires[at]!;
  return { capacityA, ...(guard === undefined ? {} : { guard }), unguardedM, faultA, clearsWithinS };
}
