import { splitAddress } from "../../document/index.ts";
import type { Netlist } from "../../netlist/index.ts";
import { deviceId, elementsIn, type ElementOf } from "./elements.ts";

/** The fuse, breaker or way a guard names; `null` where a source protects its own start. */
export function deviceAt(netlist: Netlist, at: string): ElementOf<"protection"> | null {
  const part = netlist.partAt.get(splitAddress(at)[0]);
  return (part && elementsIn(part, "protection").find((device) => deviceId(device) === at)) ?? null;
}

/** Whether a current-limiting output is what a guard names: it gives its limit and no more, whatever the fault. */
export function isLimitedOutput(netlist: Netlist, at: string): boolean {
  const part = netlist.partAt.get(at);
  return part !== undefined && elementsIn(part, "converter").length > 0;
}
