/**
 * A second reading of the circuit file, from the contract's words alone: each kind's table row as elements between named nodes.
 * It shares no code with the program, so that a mistake in one shows as a difference. Slow and plain on purpose.
 */
export interface Ends {
  readonly a: string;
  readonly b: string;
  /** Part or wire id. */
  readonly of: string;
}

export interface Conductor extends Ends {
  readonly type: "conductor";
  readonly ohm: number;
}

export interface Contact extends Ends {
  readonly type: "contact";
  readonly ohm: number;
  /** Positions of the part's control, or states of its coil, in which it is closed. */
  readonly closedIn: readonly string[];
}

export interface Fuse extends Ends {
  readonly type: "fuse";
  readonly ohm: number;
  /** As a guard names it. */
  readonly name: string;
  readonly ratingA: number | null;
  readonly closed: boolean;
  /** Counts as a way although it may be open: a breaker. */
  readonly isWay: boolean;
}

export interface Source extends Ends {
  readonly type: "source";
  readonly restV: number;
  readonly runningV: number;
  readonly ohm: number;
  readonly hasControl: boolean;
  readonly isBattery: boolean;
  readonly own: { readonly at: string; readonly ratingA: number | null } | undefined;
}

export interface Diode extends Ends {
  readonly type: "diode";
  readonly volts: number;
  readonly ohm: number;
  readonly suppresses: boolean;
}

export interface Load extends Ends {
  readonly type: "load";
  readonly law: "resistor" | "filament" | "power" | "current" | "idle";
  readonly isCoil: boolean;
  /** Ohms, watts or amps, as the law asks. */
  readonly amount: number;
  readonly ratedV: number;
  readonly minV: number;
  readonly maxV: number;
  readonly eitherWay: boolean;
}

export interface Converter extends Ends {
  readonly type: "converter";
  readonly outA: string;
  readonly outB: string;
  readonly volts: number;
  readonly efficiency: number;
  readonly maxA: number | null;
}

export type Element = Conductor | Contact | Fuse | Source | Diode | Load | Converter;

export const CHASSIS = "chassis";
