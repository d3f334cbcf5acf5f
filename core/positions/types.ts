/** All-positions results: statements about every combination of controls. */

export type Hot = "always" | "at-rest" | "switched" | "never";

export interface TerminalStanding {
  readonly hot: Hot;
  readonly via: "direct" | "load" | null;
  /** Shortest condition in words over the controls: "s1 is off"; "always", "never" at the ends. */
  readonly when: string;
  /** Hot with everything at rest. */
  readonly atRest: boolean;
  /** ...by a direct way with everything at rest. */
  readonly directAtRest: boolean;
  readonly bare: boolean;
  /** Dead short from here to battery negative, amps, worst combination; `null`: never hot by a direct way. */
  readonly faultA: number | null;
}

export interface Guard {
  /** Part id, or terminal address of a way ("blk.2"). */
  readonly at: string;
  readonly ratingA: number | null;
}

export interface WireStanding {
  readonly capacityA: number | null;
  /** `undefined`: no way from a source reaches this wire (a return). `null`: some way has no device. */
  readonly guard: Guard | null | undefined;
  /** Judged per source: the worst way from each source that reaches the wire. `source` is the part id. */
  readonly ways: readonly { readonly source: string; readonly guard: Guard | null; readonly unguardedM: number | null }[];
  readonly unguardedM: number | null;
  readonly faultA: number | null;
  readonly clearsWithinS: number | null;
}
