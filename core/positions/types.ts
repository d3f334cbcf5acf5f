import type { Solution } from "../circuit/index.ts";

/** All-positions results: statements about every combination of controls. */

/** `always`: in every combination; `at-rest`: with everything at rest, not in every one; `switched`: only with something operated. */
export type Hot = "always" | "at-rest" | "switched" | "never";

export interface TerminalStanding {
  readonly hot: Hot;
  /** `load`: the only way to a source positive runs through a load, lamp or coil. */
  readonly via: "direct" | "load" | null;
  /** Shortest condition in words over the controls: "s1 is off"; "always", "never" at the ends. */
  readonly when: string;
  /** Hot with everything at rest, by a direct way or through a load. */
  readonly atRest: "direct" | "load" | null;
  readonly bare: boolean;
  /** Dead short from here to battery negative, amps, worst combination; `null`: never hot by a direct way. */
  readonly faultA: number | null;
  /** What stands between this metal and its sources, worst case; as `WireStanding.guard`. */
  readonly guard: Guard | null | undefined;
  /** Longest time the guard may take at `faultA`; `null`: it may never, or no published table says. */
  readonly clearsWithinS: number | null;
}

export interface Guard {
  /** Part id, or terminal address of a way ("blk.2"). */
  readonly at: string;
  /** `null`: there is a device whose rating nobody gave. */
  readonly ratingA: number | null;
}

/** How one source can reach one wire, worst way. */
export interface Way {
  /** Part id of the source. */
  readonly source: string;
  readonly guard: Guard | null;
  /** Metres from the source to the far end along the shortest unguarded way; 0 when guarded, `null` when a length is unknown. */
  readonly unguardedM: number | null;
  /** Every metre of that way is sheathed. */
  readonly sheathed: boolean;
  /** Unguarded, and everything beyond it is the first device or devices: placing is judged, not absence. */
  readonly onlyToDevices: boolean;
  /** Unguarded stretch of a link to another source whose only device sits at the other end. */
  readonly unfusedEnd: boolean;
  /** Joins one battery's positive to the next one's negative in a series string. */
  readonly seriesLink: boolean;
}

export interface WireStanding {
  readonly capacityA: number | null;
  /** `undefined`: no way from a source reaches this wire (a return). `null`: some way has no device. */
  readonly guard: Guard | null | undefined;
  readonly ways: readonly Way[];
  readonly unguardedM: number | null;
  /** Of a dead short at the weaker of its two ends, worst combination. */
  readonly faultA: number | null;
  /** Longest time its guard may take at that current; `null`: it may never, or no published table says. */
  readonly clearsWithinS: number | null;
  /** Of the same short, the most heat the guard may let through over what the conductor stands; `null`: not known. */
  readonly heatRatio: number | null;
}

/** A control's group had too many combinations, or relays that never settle: said, never passed over. */
export interface Unproved {
  readonly controls: readonly string[];
  readonly why: "too-many" | "unsettled";
  /** The unsettled combination in words. */
  readonly when: string;
}

/** One combination of the controls of one group, solved: for rules about every combination (backfeed, never-off, relay-miswired). */
export interface GroupSample {
  readonly combination: Uint8Array;
  readonly solution: Solution;
}

/** Everything said about all combinations. */
export interface Standing {
  /** By terminal number and by wire number. */
  readonly terminals: readonly TerminalStanding[];
  readonly wires: readonly WireStanding[];
  /** Solved combinations: every one of each group with the other groups at rest; `rest` first. Empty past the budget. */
  readonly samples: readonly GroupSample[];
  /** Every combination of every group is among the samples, so that "in every combination" can be said of them. */
  readonly isSampled: boolean;
  readonly combinations: number;
  readonly unproved: readonly Unproved[];
}
