/**
 * The solver's vocabulary: a circuit is numbered nodes and branches between them. Nothing here knows a part, a wire or a
 * vehicle; `netlist` translates a drawing into this and the solver answers in it.
 *
 * Sign: the current of a branch is positive from `a` to `b` through the branch; a source is the exception and is positive
 * while it delivers (out of `a`, its positive). Units: V, A, ohm, W. Node numbers are 0 .. nodeCount - 1; no node is special.
 */

/** A fixed conductor. `ohm` 0 is allowed and means one node in two places; its current is still reported. */
export interface ResistorBranch {
  readonly type: "resistor";
  readonly a: number;
  readonly b: number;
  readonly ohm: number;
}

/** A contact: a conductor of `ohm` (0 allowed) while closed, nothing while open. Open and closed come with the `State`. */
export interface ContactBranch {
  readonly type: "contact";
  readonly a: number;
  readonly b: number;
  readonly ohm: number;
}

/** EMF `volts` (positive at `a`) behind `ohm` (0 allowed). Present only while the `State` says it is on. */
export interface SourceBranch {
  readonly type: "source";
  readonly a: number;
  readonly b: number;
  readonly volts: number;
  readonly ohm: number;
}

/** Conducts from `a` (anode) to `b` (cathode) as `forwardV` behind `ohm` (0 allowed) and blocks the other way. */
export interface DiodeBranch {
  readonly type: "diode";
  readonly a: number;
  readonly b: number;
  readonly forwardV: number;
  readonly ohm: number;
}

/** I = watts/ratedV * (V/ratedV)^0.55, odd in V (either polarity). Exponent: see the lamp table in `reference`. */
export interface FilamentBranch {
  readonly type: "filament";
  readonly a: number;
  readonly b: number;
  readonly watts: number;
  readonly ratedV: number;
}

/**
 * Draws `watts` at whatever voltage it gets, on the higher-voltage solution. Outside `minV`..`maxV` it is open (`null`: no
 * such limit). `eitherWay` false: it draws nothing when reversed.
 */
export interface PowerBranch {
  readonly type: "power";
  readonly a: number;
  readonly b: number;
  readonly watts: number;
  readonly minV: number | null;
  readonly maxV: number | null;
  readonly eitherWay: boolean;
}

/** Draws `amps` from 1 V up. `eitherWay` false: it draws nothing when reversed. */
export interface CurrentBranch {
  readonly type: "current";
  readonly a: number;
  readonly b: number;
  readonly amps: number;
  readonly eitherWay: boolean;
}

/** An isolated converter: `volts` at outA over outB behind 0 ohm; takes output watts / `efficiency` at inA over inB. */
export interface ConverterBranch {
  readonly type: "converter";
  readonly a: number;
  readonly b: number;
  readonly outA: number;
  readonly outB: number;
  readonly volts: number;
  readonly efficiency: number;
}

export type Branch =
  | ResistorBranch
  | ContactBranch
  | SourceBranch
  | DiodeBranch
  | FilamentBranch
  | PowerBranch
  | CurrentBranch
  | ConverterBranch;

/** A relay to the solver: the branch that is its coil and the contacts it moves. All start released. */
export interface Relay {
  /** Index of the coil's resistor branch. */
  readonly coil: number;
  readonly pullInV: number;
  readonly dropOutV: number;
  /** Contact branches closed while pulled in. */
  readonly makes: readonly number[];
  /** Contact branches closed while released. */
  readonly breaks: readonly number[];
}

export interface Circuit {
  readonly nodeCount: number;
  readonly branches: readonly Branch[];
  readonly relays: readonly Relay[];
  /**
   * Nodes that may serve as zero volts, best first. Each network (what branches join, open contacts and absent sources
   * excepted) measures from the first of these it contains; a network with none has no voltages.
   */
  readonly references: readonly number[];
}

/** What the outside world sets before a solve. Arrays run over `circuit.branches`; entries of other branch types are unread. */
export interface State {
  /** 1: contact closed, or source present. Contacts a relay moves are set by the solver, not from here. */
  readonly closed: Uint8Array;
  /** EMF of each source branch in this state, volts; `null` takes every `volts` of the circuit. */
  readonly sourceV: Float64Array | null;
  /** 1: a load (power, current, filament) that draws nothing, whatever volts it has. Left out: none. */
  readonly idle?: Uint8Array;
}

/**
 * The operating point. Arrays run over nodes or branches. `status` "ok": everything holds. "chatter": no settled relay
 * positions. "contradictory": ideal sources disagree, `conflict` lists their branches. "no-convergence": `residualA` is
 * the last. Without "ok" the volts and amps say nothing and `known` is all 0. Never NaN.
 */
export interface Solution {
  readonly status: "ok" | "chatter" | "contradictory" | "no-convergence";
  /** Volts against the zero of the node's own network; meaningless where `known` is 0. */
  readonly nodeV: Float64Array;
  /** 1 where the node's network has a zero. */
  readonly known: Uint8Array;
  /** Network number of each node (0 up), or -1 where `known` is 0. */
  readonly network: Int32Array;
  /** Amps of each branch; of a converter the input's. */
  readonly branchA: Float64Array;
  /** Amps a converter's output delivers; 0 for every other branch. */
  readonly outputA: Float64Array;
  /** 1 for a load (power, current, filament) that draws, a diode that conducts, a contact that is closed, a source that is on. */
  readonly active: Uint8Array;
  /** 1 for each relay that is pulled in. */
  readonly pulledIn: Uint8Array;
  /** Worst imbalance of current at any node, worked out from the branches, amps. */
  readonly residualA: number;
  /** Delivered less consumed power, watts, absolute. */
  readonly residualW: number;
  /** Branches of contradictory ideal sources, else empty. */
  readonly conflict: readonly number[];
}
