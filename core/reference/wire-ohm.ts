import { parseWireSize } from "../units/index.ts";
import { awgAreaMm2 } from "./awg.ts";
import { COPPER_OHM_MM2_PER_M, copperTemperatureFactor } from "./copper.ts";
import { metricConductor } from "./metric-conductors.ts";

/** What a size of wire is made of, electrically. */
export interface WireConductor {
  /** Ohms of one metre of one conductor, one way, at the temperature asked for. */
  readonly ohmPerM: number;
  /** Copper area: by formula for AWG, nominal for mm2. */
  readonly areaMm2: number;
  readonly source: string;
  readonly fromMemory: boolean;
}

/**
 * Resistance per metre and copper area of a wire size ("16 AWG", "1.5 mm2") with its conductor at `conductorC` °C.
 * One conductor, one way: a return is a wire of its own.
 * No answer: `null` for what is no size, and for an mm2 size that is in no table.
 * Source: AWG by ASTM B258 area and IEC 60028 copper; mm2 by the ISO 6722 maximum to 16 mm², IEC 60228 class 5 above.
 */
export function wireOhmPerM(size: string, conductorC: number): WireConductor | null {
  const parsed = parseWireSize(size);
  if (!parsed.ok) return null;
  const factor = copperTemperatureFactor(conductorC);
  if (parsed.value.system === "awg") {
    const areaMm2 = awgAreaMm2(parsed.value.gauge);
    const ohmPerM = (COPPER_OHM_MM2_PER_M / areaMm2) * factor;
    return { ohmPerM, areaMm2, source: "ASTM B258 area, IEC 60028 copper", fromMemory: false };
  }
  const listed = metricConductor(parsed.value.areaMm2);
  if (!listed) return null;
  return {
    ohmPerM: (listed.maxMohmPerM / 1000) * factor,
    areaMm2: listed.areaMm2,
    source: listed.source,
    fromMemory: listed.fromMemory === true,
  };
}

/** Copper area of a wire size in mm² (nominal for mm2 sizes, listed or not); `null` for what is no size. */
export function wireAreaMm2(size: string): number | null {
  const parsed = parseWireSize(size);
  if (!parsed.ok) return null;
  return parsed.value.system === "awg" ? awgAreaMm2(parsed.value.gauge) : parsed.value.areaMm2;
}
