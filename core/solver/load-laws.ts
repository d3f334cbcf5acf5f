/**
 * What each kind of load draws at given volts, and the straight line that stands in for it near there.
 *
 * Volts and amps here are along the branch, a over b and a to b. Constant current and, in the plain iteration, constant power
 * keep the line of a load that is off, and all they draw is extra; Newton's takes the tangent of a constant power, a
 * negative conductance. A filament's line is always a tangent: its conductance is positive.
 */
import type { FilamentBranch } from "../circuit/index.ts";
import { TIE_S } from "./model.ts";

/** Exponent of a filament's current: I = watts/ratedV (V/ratedV)^0.55. */
const FILAMENT_EXPONENT = 0.55;
/** Below this part of its rated volts a filament is taken as a plain resistance; the law's slope has no bound at 0 V. */
const COLD = 1e-9;

export interface Line {
  readonly g: number;
  readonly h: number;
}

export const TIE: Line = { g: TIE_S, h: 0 };

/** Amps of a filament at `volts`. Odd: either polarity. */
export function filamentA({ watts, ratedV }: FilamentBranch, volts: number): number {
  const part = Math.abs(volts) / ratedV;
  const ratedA = watts / ratedV;
  if (part <= COLD) return ratedA * COLD ** (FILAMENT_EXPONENT - 1) * (volts / ratedV);
  return Math.sign(volts) * ratedA * part ** FILAMENT_EXPONENT;
}

/** Tangent of a filament's law at `volts`. */
export function filamentLine(filament: FilamentBranch, volts: number): Line {
  const { watts, ratedV } = filament;
  if (Math.abs(volts) <= COLD * ratedV) return { g: (watts / ratedV ** 2) * COLD ** (FILAMENT_EXPONENT - 1), h: 0 };
  const amps = filamentA(filament, volts);
  return { g: (FILAMENT_EXPONENT * amps) / volts, h: (1 - FILAMENT_EXPONENT) * amps };
}

/** A filament at its rated volts as a plain resistance: where every solve starts from. */
export function filamentAtRating({ watts, ratedV }: FilamentBranch): Line {
  return { g: watts / ratedV ** 2, h: 0 };
}

/**
 * The volts at which to take the next tangent, after the line taken at `from` was met at `volts` and `amps`. The law is concave in
 * volts and convex in amps: going up by volts, or down by amps, each never steps past the solution of a single lamp.
 */
export function filamentNext({ watts, ratedV }: FilamentBranch, from: number, volts: number, amps: number): number {
  const goesDown = Math.abs(volts) < Math.abs(from) && Math.sign(volts) === Math.sign(amps);
  if (!goesDown || Math.abs(volts) <= COLD * ratedV) return volts;
  return Math.sign(amps) * ratedV * ((Math.abs(amps) * ratedV) / watts) ** (1 / FILAMENT_EXPONENT);
}

/** Tangent of a constant power at `volts`. */
export function powerLine(watts: number, volts: number): Line {
  return { g: -watts / volts ** 2, h: (2 * watts) / volts };
}
