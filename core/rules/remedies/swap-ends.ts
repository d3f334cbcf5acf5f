import type { Edit } from "../../document/index.ts";
import type { Netlist } from "../../netlist/index.ts";

/** Every wire on one terminal goes to the other and back. */
export function swapEnds(netlist: Netlist, one: string, two: string): readonly Edit[] {
  const other = (address: string) => (address === one ? two : address === two ? one : address);
  return netlist.wires
    .filter(({ wire }) => [wire.from, wire.to].some((end) => end === one || end === two))
    .map(({ wire }) => ({ op: "set-wire", id: wire.id, change: { from: other(wire.from), to: other(wire.to) } }));
}
