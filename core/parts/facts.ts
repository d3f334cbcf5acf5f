/** An answer only the person can give. */
export type Say = "yes" | "no" | "unknown";

/**
 * What rules and papers may need to know of a part beyond its elements, by property and never by kind. An absent field: the part
 * has no such thing. A field that is `null`: it has one, and nobody has said what it is.
 */
export interface PartFacts {
  /** What the body (block, plug, switch, strip, bar) may carry, amps. Contacts and holders carry theirs in their elements. */
  readonly ratedA?: number | null;
  /** A wire of the vehicle that is tapped. `spareA`: allowed extra load, amps. */
  readonly feed?: {
    readonly monitored: Say;
    readonly pulsed: Say;
    readonly spareA: number | null;
    readonly measured: boolean;
  };
  /** `sensor`: a battery sensor sits on the negative post. */
  readonly battery?: { readonly capacityAh: number | null; readonly sensor: boolean };
  /** A joint to the vehicle's metal. */
  readonly surface?: "clean" | "painted" | "unknown";
  /** A joint of wires. `barrel`: colour or mm2 range as entered. */
  readonly splice?: { readonly barrel: string | null; readonly tap: "crimp" | "solder" | "piercing" | null };
  readonly plug?: PlugFacts;
  /** A bar that gathers negatives. */
  readonly returnBar?: true;
}

/** `fedSide`: the contacts of the `a` half (the fed one); the `b` half has the other sort. */
export interface PlugFacts {
  readonly fedSide: "pins" | "sockets" | null;
  /** Terminal names of each way, first the `a` half. */
  readonly pairs: readonly (readonly [a: string, b: string])[];
  /** Jobs of each way, in the order of `pairs`; empty where none is stated. */
  readonly functions: readonly (readonly string[])[];
}
