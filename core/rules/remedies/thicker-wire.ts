import type { NetWire } from "../../netlist/index.ts";
import { formatWireSize } from "../../units/index.ts";
import type { Remedy, Study } from "../rule.ts";
import { nameOf } from "../study/words.ts";
import { sizeFor } from "./wire-sizes.ts";

/** The thinnest wire that carries so many amps here; empty when none sold does. */
export function thickerWire(study: Study, wire: NetWire, amps: number): readonly Remedy[] {
  const size = sizeFor(study.netlist, wire, amps);
  if (size === null) return [];
  return [
    {
      id: "thicker-wire",
      text: `Make ${nameOf(study, wire.wire.id)} ${formatWireSize(size)}, the thinnest that passes`,
      edits: [{ op: "set-wire", id: wire.wire.id, change: { size } }],
    },
  ];
}
