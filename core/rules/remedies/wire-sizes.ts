import { wireSurroundings } from "../../document/index.ts";
import type { Netlist, NetWire } from "../../netlist/index.ts";
import { wireAreaMm2, wireCapacityA, wireOhmPerM } from "../../reference/index.ts";
import { parseWireSize } from "../../units/index.ts";
import { isUnder } from "../study/limits.ts";

/** Sizes sold as vehicle cable, thinnest first (common practice, no source). */
const SOLD = {
  awg: [20, 18, 16, 14, 12, 10, 8, 6, 4, 2].map((gauge) => `${gauge} AWG`).concat("1/0 AWG", "2/0 AWG", "3/0 AWG"),
  mm2: [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70].map((areaMm2) => `${areaMm2} mm2`),
} as const;

/** Sizes thicker than this wire, thinnest first, in the wire's own system. Of a wire without a size: all, in the drawing's. */
export function thickerSizes({ system }: Netlist, { wire }: NetWire): readonly string[] {
  const size = wire.size === undefined ? null : parseWireSize(wire.size);
  const sold = SOLD[size?.ok ? size.value.system : system.sizes];
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
