import type { Document, SystemSettings, Wire } from "./types.ts";

/** The system settings with every default filled in; what nobody may assume stays `null`. */
export type System = Required<Omit<SystemSettings, "alternatorA" | "baseLoadA">> & {
  readonly alternatorA: number | null;
  readonly baseLoadA: number | null;
};

export const systemDefaults: System = {
  nominalV: 12,
  ambientC: 30,
  conductorC: 20,
  cautionDropPercent: 5,
  faultDropPercent: 10,
  fuseLoadPercent: 70,
  capacityTable: "vehicle",
  alternatorA: null,
  baseLoadA: null,
  sizes: "awg",
};

export function systemOf(document: Document): System {
  return { ...systemDefaults, ...document.system };
}

/** Surroundings of a wire, defaults filled in. 105 °C is the common insulation class of vehicle cable (common practice, no source). */
export function wireSurroundings(wire: Wire, system: System) {
  return {
    insulationC: wire.insulationC ?? 105,
    ambientC: wire.ambientC ?? system.ambientC,
    bundle: wire.bundle ?? 1,
    sheathed: wire.sheathed ?? false,
  };
}
