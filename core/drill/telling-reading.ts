import type { SituationReading } from "../readings/index.ts";
import type { Fault } from "./fault.ts";

/** A place for the red lead (black on battery negative), in one situation, and what the meter shows there. */
export interface TellingReading {
  readonly situation: string;
  readonly terminal: string;
  /** With the fault. `null`: no reading, the terminal floats. */
  readonly volts: number | null;
  /** In a sound circuit. */
  readonly soundVolts: number | null;
  /** Faults that would show the same there, within half a volt. */
  readonly sameAs: readonly Fault[];
}

export interface Suspect {
  readonly fault: Fault;
  readonly readings: readonly SituationReading[];
}

/** Readings closer than this can't be told apart on a meter in a yard. Volts. */
const TOLD_APART_V = 0.5;

/**
 * The reading that separates a fault from the sound circuit and from most other faults; of equals the one furthest from sound.
 * `null` when no terminal shows the fault at all.
 */
export function tellingReading(
  sound: readonly SituationReading[],
  broken: readonly SituationReading[],
  suspects: readonly Suspect[],
): TellingReading | null {
  const places = broken.flatMap((reading, at) => Object.keys(reading.terminals).map((terminal) => ({ at, terminal })));
  const candidates = places.flatMap(({ at, terminal }) => {
    const volts = voltsAt(broken[at], terminal);
    const soundVolts = voltsAt(sound[at], terminal);
    const margin = apart(volts, soundVolts);
    if (margin < TOLD_APART_V) return [];
    const sameAs = suspects.filter(({ readings }) => apart(volts, voltsAt(readings[at], terminal)) < TOLD_APART_V);
    return [
      { situation: broken[at]!.id, terminal, volts, soundVolts, margin, sameAs: sameAs.map(({ fault }) => fault) },
    ];
  });
  const [best] = candidates.sort((one, other) => one.sameAs.length - other.sameAs.length || other.margin - one.margin);
  if (!best) return null;
  const { situation, terminal, volts, soundVolts, sameAs } = best;
  return { situation, terminal, volts, soundVolts, sameAs };
}

function voltsAt(reading: SituationReading | undefined, terminal: string): number | null {
  return reading?.terminals[terminal]?.volts ?? null;
}

/** A terminal that floats shows as good as nothing against one at battery volts. */
function apart(one: number | null, other: number | null): number {
  if (one === null && other === null) return 0;
  return Math.abs((one ?? 0) - (other ?? 0));
}
