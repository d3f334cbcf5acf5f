/**
 * What a part is made of electrically, in the words all kinds share. A kind's `model` returns these; the netlist, the rules and
 * the papers read them, and so never need to ask which kind a part is.
 *
 * Ends are terminal names of the part; names that start with `$` are nodes inside it; `CHASSIS` is the vehicle's one frame.
 * `null` for a rating or a quantity means the person has not said: the value is unknown, never assumed.
 */
export const CHASSIS = "$chassis";

/** Terminals that are one piece of metal (posts of a strip, the spot where wires meet). */
export interface Bar {
  readonly type: "bar";
  readonly terminals: readonly string[];
}

/** A fixed conductor inside the part or to the chassis. `ohm` 0: one node. `bond` marks a battery's own strap to the frame. */
export interface Link {
  readonly type: "link";
  readonly a: string;
  readonly b: string;
  readonly ohm: number;
  readonly bond?: "given" | "assumed";
}

/** EMF behind a resistance. Present always, or while the part's control stands in one of `when`. */
export interface SourceElement {
  readonly type: "source";
  readonly plus: string;
  readonly minus: string;
  readonly restV: number;
  readonly runningV: number;
  readonly ohm: number;
  readonly when: readonly string[] | null;
  /** The source's own protection at its start; absent: it has none, `null`: there is one but its rating is unknown. */
  readonly fuseA?: number | null;
  /** Offers its `minus` as the zero of its network. */
  readonly zero: boolean;
}

/** A fuse or a breaker. `closed` false: pulled or tripped. */
export interface Protection {
  readonly type: "protection";
  readonly a: string;
  readonly b: string;
  readonly ohm: number;
  readonly ratingA: number | null;
  readonly closed: boolean;
  /** An open one of these still counts as a way for a fault (a breaker recloses; a pulled fuse is out of its holder). */
  readonly recloses: boolean;
  /** How reports name it after the part id: "" for the part itself, else a terminal ("blk.2"). */
  readonly terminal: string;
  /** Fuse body by which `reference` knows its operating times; `null`: none published. */
  readonly gates: string | null;
  readonly holderA: number | null;
  readonly autoReset?: boolean;
}

/** A contact moved by the part's own control or by one of its coils. */
export interface Contact {
  readonly type: "contact";
  readonly a: string;
  readonly b: string;
  readonly ohm: number;
  readonly movedBy:
    | { readonly positions: readonly string[] }
    | { readonly coil: string; readonly closedWhen: "pulled-in" | "released" };
  readonly ratedA: number | null;
}

export interface Coil {
  readonly type: "coil";
  readonly name: string;
  /** First end is 85, second 86, as marked on the part. */
  readonly a: string;
  readonly b: string;
  readonly ohm: number;
  readonly pullInV: number;
  readonly dropOutV: number;
  readonly maxV: number;
  readonly suppression: "none" | "resistor" | "diode";
}

export interface DiodeElement {
  readonly type: "diode";
  readonly a: string;
  readonly k: string;
  readonly forwardV: number;
  readonly ohm: number;
  readonly ratedA: number | null;
  /** A coil's own suppression diode counts as part of its coil. */
  readonly suppresses?: string;
}

export type Draw =
  | { readonly law: "resistor"; readonly ohm: number | null }
  | { readonly law: "filament"; readonly watts: number | null; readonly ratedV: number }
  | { readonly law: "current"; readonly amps: number | null }
  /** `opens`: electrically open outside these volts (an LED lamp). */
  | {
      readonly law: "power";
      readonly watts: number | null;
      readonly opens: { readonly minV: number | null; readonly maxV: number | null } | null;
    };

/** Anything that uses current, and any plain resistance a fault current would not get past. */
export interface Load {
  readonly type: "load";
  readonly a: string;
  readonly b: string;
  readonly draw: Draw;
  /** What it is to the person: `use` shows as on or off and has rules; `resistance` is just there; `existing` is what the vehicle already feeds. */
  readonly role: "use" | "resistance" | "existing";
  readonly ratedV: number;
  readonly minV: number | null;
  readonly maxV: number | null;
  /** Draws nothing, or is harmed, when reversed. */
  readonly polarised: boolean;
  /** Draws when reversed although polarised (a resistor, a motor). */
  readonly conductsReversed: boolean;
  readonly continuous: boolean;
  readonly mustBeOffAtRest: boolean;
  /** How `on` is told: while it draws; from this fraction of `ratedV`; over this fraction of `statedA`. */
  readonly onWhen: { readonly drawing: true } | { readonly voltsFraction: number } | { readonly ampsFraction: number };
  readonly statedA: number | null;
  readonly start: { readonly ohm: number | null; readonly amps: number | null; readonly seconds: number | null } | null;
  /** Mains gear and motors are called `motor` in texts; no behaviour hangs on it. */
  readonly noun: "lamp" | "load" | "motor" | "resistor";
}

export interface ConverterElement {
  readonly type: "converter";
  readonly inPlus: string;
  readonly inMinus: string;
  readonly outPlus: string;
  readonly outMinus: string;
  readonly outV: number;
  readonly maxA: number | null;
  readonly efficiency: number;
}

export type Element = Bar | Link | SourceElement | Protection | Contact | Coil | DiodeElement | Load | ConverterElement;
