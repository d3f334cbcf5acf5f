import type { NetWire } from "../netlist/index.ts";
import { wireAreaMm2 } from "../reference/index.ts";
import { sizeBeside, type Draft } from "./draft.ts";

/**
 * Of the wires that carry a load's current, feed and return, the one where the next size saves most volts for its copper;
 * `undefined` where none can grow. `at`: the load's part id or one of its terminals.
 */
export function bestForDrop(draft: Draft, at: string): NetWire | undefined {
  const { netlist, situations } = draft.study;
  const part = netlist.partAt.get(at) ?? netlist.terminalAt.get(at)?.part;
  if (!part) return undefined;
  const path = wiresToward(draft, new Set(part.terminals.map(({ node }) => node)));
  let best: { wire: NetWire; worth: number } | undefined;
  for (const wire of draft.wires) {
    const size = path.has(wire.index) ? sizeBeside(draft, wire, 1) : null;
    if (size === null || !wire.wire.metres || wire.areaMm2 === null) continue;
    const areaMm2 = wireAreaMm2(size) ?? wire.areaMm2;
    const amps = Math.max(...situations.map(({ wires }) => Math.abs(wires[wire.wire.id]?.amps ?? 0)));
    const savedV = amps * wire.ohm * (1 - wire.areaMm2 / areaMm2);
    const worth = savedV / ((areaMm2 - wire.areaMm2) * wire.wire.metres);
    if (savedV > 0 && (!best || worth > best.worth)) best = { wire, worth };
  }
  return best?.wire;
}

/** Numbers of the wires joined to these nodes by conductors alone, whatever the contacts do; never through a load or coil. */
function wiresToward(draft: Draft, from: ReadonlySet<number>): Set<number> {
  const { netlist } = draft.study;
  const ties = new Map<number, { to: number; wire: number }[]>();
  const tie = (a: number, b: number, wire: number) => {
    for (const [one, to] of [
      [a, b],
      [b, a],
    ] as const)
      ties.set(one, [...(ties.get(one) ?? []), { to, wire }]);
  };
  for (const wire of netlist.wires) tie(wire.from.node, wire.to.node, wire.index);
  for (const { spec, a, b } of netlist.elements) {
    if (spec.type === "link" || spec.type === "contact" || spec.type === "protection" || spec.type === "diode")
      tie(a, b, -1);
  }
  const reached = new Set(from);
  const wires = new Set<number>();
  for (const node of reached) {
    for (const { to, wire } of ties.get(node) ?? []) {
      if (wire >= 0) wires.add(wire);
      reached.add(to);
    }
  }
  return wires;
}
