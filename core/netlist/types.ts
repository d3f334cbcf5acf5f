import type { Circuit } from "../circuit/index.ts";
import type { Cover, Document, Part, System, Wire } from "../document/index.ts";
import type { Control, Element, PartKind, Terminal } from "../parts/index.ts";

/** One terminal of one part, bound to its node. Index in `Netlist.terminals` is its number everywhere. */
export interface NetTerminal {
  readonly index: number;
  /** "k1.87a" */
  readonly address: string;
  readonly part: NetPart;
  readonly terminal: Terminal;
  readonly node: number;
  /** Numbers of the wires that end here. */
  readonly wires: readonly number[];
  /** The cover given, or the one that holds by default. */
  readonly cover: Cover;
}

export interface NetPart {
  readonly index: number;
  readonly part: Part;
  readonly kind: PartKind;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly control: Control | null;
  readonly terminals: readonly NetTerminal[];
  readonly elements: readonly NetElement[];
}

/** An element with its ends as node numbers. */
export interface NetElement<E extends Element = Element> {
  readonly index: number;
  readonly part: NetPart;
  readonly spec: E;
  /** First and second end as the element names them (plus/minus, a/b, a/k, inPlus/inMinus); of a bar its first terminal twice. */
  readonly a: number;
  readonly b: number;
  /** The output side of a converter; -1 for everything else. */
  readonly outA: number;
  readonly outB: number;
  /** The branch of `Netlist.circuit`, or -1 where there is none (a bar, a pulled fuse). */
  readonly branch: number;
  /** Element number of the coil that moves this contact, or -1. */
  readonly coil: number;
  /** Number in `Circuit.relays` for a coil, or -1. */
  readonly relay: number;
}

export interface NetWire {
  readonly index: number;
  readonly wire: Wire;
  readonly from: NetTerminal;
  readonly to: NetTerminal;
  readonly branch: number;
  readonly ohm: number;
  /** Both size and length are known; else it is solved as 0.1 milliohm and its drop is unknown. */
  readonly known: boolean;
  readonly areaMm2: number | null;
  /** After ambient and bundle derating, amps; `null` when the size is unknown or outside the table. */
  readonly capacityA: number | null;
}

/** Anything a person or the vehicle operates. */
export interface NetControl {
  /** "engine" or the part's id. */
  readonly id: string;
  /** First is the rest position. */
  readonly positions: readonly string[];
  readonly part: NetPart | null;
}

/**
 * The drawing as an electrical net, with the way back from every node and branch to terminal, wire and part.
 * `circuit` holds all branches with every contact in it; `stateOf` says which are closed.
 */
export interface Netlist {
  readonly document: Document;
  readonly system: System;
  readonly parts: readonly NetPart[];
  readonly terminals: readonly NetTerminal[];
  readonly wires: readonly NetWire[];
  readonly elements: readonly NetElement[];
  /** `engine` first. */
  readonly controls: readonly NetControl[];
  readonly nodeCount: number;
  /** The node of the vehicle's one frame. */
  readonly chassis: number;
  readonly circuit: Circuit;
  readonly terminalAt: ReadonlyMap<string, NetTerminal>;
  readonly partAt: ReadonlyMap<string, NetPart>;
  readonly wireAt: ReadonlyMap<string, NetWire>;
}

/** A position for every control, in the order of `Netlist.controls`: index into its `positions`, 0 at rest. */
export type Combination = Uint8Array;
