import { wireSurroundings } from "../../document/index.ts";
import type { Netlist, NetWire } from "../../netlist/index.ts";
import { soldWireSizes, wireAreaMm2, wireCapacityA, wireOhmPerM } from "../../reference/index.ts";
import { parseWireSize } from "../../units/index.ts";
import { isUnder } from "../study/limits.ts";

/** Sizes thicker than this wire, thinnest first, in the wire's own system. Of a wire without a size: all, in the drawing's. */
export function thickerSizes({ system }: Netlist, { wire }: NetWire): readonly string[] {
  const size = wire.size === undefined ? null : parseWireSize(wire.size);
  const sold = soldWireSizes(size?.ok ? size.value.system : system.sizes);
  const areaMm2 = (wire.size === undefined ? null : wireAreaMm2(wire.size)) ?? 0;
  return sold.filter((each) => (wireAreaMm2(each) ?? 0) > areaMm2 * 1.001);
}

/** Amps this wire might carry in its place if it had another size; `null` where no table says. */
export function capacityWith({ system }: Netlist, { wire }: NetWire, size: string): number | null {
  return wireCapacityA({ size, ...wireSurroundings(wire, system) }, system.capacityTable);
}

/** Thinnest size that carries so much in this wire's place; `null` when none sold does. */
export function sizeFor(netlist: Netlist, wire: NetWire, amps: number): string | null {
  return (
    thickerSizes(netlist, wire).find((size) => {
      const capacityA = capacityWith(netlist, wire, size);
      return capacityA !== null && !isUnder(capacityA, amps);
    }) ?? null
  );
}

/** Ohms of this wire if it had another size; `null` while its length is unknown. */
export function ohmWith({ system }: Netlist, { wire }: NetWire, size: string): number | null {
  const conductor = wireOhmPerM(size, system.conductorC);
  return conductor && wire.metres !== undefined ? conductor.ohmPerM * wire.metres : null;
}
