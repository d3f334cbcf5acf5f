/**
 * The circuit as it stands at one moment of a solve: which contacts are closed, which sources and converter outputs are
 * present, which diodes conduct, which loads draw, and every branch's linear stand-in. All other files of the solver
 * change this and ask it for volts; it keeps an assembly for every set of zero-ohm branches met so far.
 */
import type { Branch, Circuit } from "../circuit/index.ts";
import { Assembly } from "./assembly.ts";
import type { RigidLink } from "./clusters.ts";
import { RigidFlows } from "./rigid-flows.ts";

/** Conductance (S) that ties the ends of a load that draws nothing or a blocking diode: what a meter's own leakage would do. */
export const TIE_S = 1e-12;

/** At most this many assemblies are kept. */
const KEPT = 32;

interface Frame {
  readonly assembly: Assembly;
  readonly flows: RigidFlows | null;
}

export class Model {
  readonly circuit: Circuit;
  /** 1: contact closed, source or converter output present, diode conducting, load drawing; always 1 for a resistor. */
  readonly on: Uint8Array;
  /** Volts of each source, diode (forward) and converter output as they are now; 0 for every other branch. */
  readonly emf: Float64Array;
  /** 1: taken out of the circuit altogether, ties included. */
  readonly absent: Uint8Array;
  readonly g: Float64Array;
  readonly h: Float64Array;
  readonly nodeV: Float64Array;
  readonly diodes: readonly number[];
  readonly loads: readonly number[];
  readonly converters: readonly number[];
  private readonly zeroOhm: readonly number[];
  private readonly frames = new Map<string, Frame>();
  private frame: Frame | null = null;
  private frameIsStale = true;
  private emfChanged = true;
  private readonly changed: number[] = [];

  constructor(circuit: Circuit) {
    this.circuit = circuit;
    const { branches } = circuit;
    this.on = new Uint8Array(branches.length);
    this.emf = Float64Array.from(branches, emfOf);
    this.absent = new Uint8Array(branches.length);
    this.g = new Float64Array(branches.length);
    this.h = new Float64Array(branches.length);
    this.nodeV = new Float64Array(circuit.nodeCount);
    const which = (test: (branch: Branch) => boolean): number[] =>
      branches.flatMap((branch, index) => (test(branch) ? [index] : []));
    this.diodes = which((branch) => branch.type === "diode");
    this.loads = which(({ type }) => type === "power" || type === "current" || type === "filament");
    this.converters = which((branch) => branch.type === "converter");
    this.zeroOhm = which(isZeroOhm);
    branches.forEach((branch, index) => this.set(index, branch.type === "resistor"));
  }

  /** Switches a resistor, contact, source, diode or converter output; loads have their draw set by `setDraw` as well. */
  set(index: number, on: boolean): void {
    if (this.absent[index]) return;
    const branch = this.circuit.branches[index]!;
    if (isZeroOhm(branch) && this.on[index] !== Number(on)) this.frameIsStale = true;
    this.on[index] = Number(on);
    if (branch.type === "diode" && !on) this.setDraw(index, TIE_S, 0);
    else if ("ohm" in branch) {
      const g = on && branch.ohm > 0 ? 1 / branch.ohm : 0;
      this.setDraw(index, g, g === 0 ? 0 : -g * this.emf[index]!);
    }
  }

  /** Takes a branch out of the circuit, or puts it back as it was made: a resistor in, all else off. */
  setAbsent(index: number, absent: boolean): void {
    if (this.absent[index] === Number(absent)) return;
    this.absent[index] = 0;
    this.set(index, !absent && this.circuit.branches[index]!.type === "resistor");
    if (absent) this.setDraw(index, 0, 0);
    this.absent[index] = Number(absent);
  }

  /** Sets a branch's stand-in: current a to b = g (va - vb) + h. */
  setDraw(index: number, g: number, h: number): void {
    if (this.g[index] === g && this.h[index] === h) return;
    this.g[index] = g;
    this.h[index] = h;
    this.changed.push(index);
  }

  setEmf(index: number, volts: number): void {
    if (this.emf[index] === volts) return;
    this.emf[index] = volts;
    this.emfChanged = true;
    if (this.on[index]) this.set(index, true);
  }

  volts(index: number): number {
    const { a, b } = this.circuit.branches[index]!;
    return this.nodeV[a]! - this.nodeV[b]!;
  }

  /** Solves the linear stand-ins into `nodeV`. Gives the branches of ideal sources that disagree, or `null`. */
  solveLinear(): readonly number[] | null {
    let reload = this.emfChanged;
    if (this.frameIsStale || this.frame === null) {
      this.frame = this.findFrame();
      this.frameIsStale = false;
      reload = true;
    }
    const { assembly } = this.frame;
    if (reload) {
      const conflict = assembly.clusters.setVolts(this.emf);
      this.emfChanged = conflict !== null;
      if (conflict) return conflict;
      for (let index = 0; index < this.g.length; index++) assembly.load(index, this);
    } else for (const index of this.changed) assembly.load(index, this);
    this.changed.length = 0;
    assembly.solve(this.nodeV);
    return null;
  }

  get assembly(): Assembly {
    return this.frame!.assembly;
  }

  /**
   * Amps a to b of every zero-ohm branch (of a converter: outA to outB through its output), 0 for all others, or `null` when there
   * are none. `flowA` gives the amps a to b of all other branches (of a converter: its input).
   */
  rigidFlows(flowA: Float64Array): Float64Array | null {
    const { flows } = this.frame!;
    if (!flows) return null;
    const taken = new Float64Array(this.circuit.nodeCount);
    this.circuit.branches.forEach((branch, index) => {
      if (branch.type !== "converter" && this.isRigid(index)) return;
      taken[branch.a]! += flowA[index]!;
      taken[branch.b]! -= flowA[index]!;
    });
    const rigidA = new Float64Array(flowA.length);
    flows.fill(taken, rigidA);
    return rigidA;
  }

  /** Amps a to b of every branch by its linear stand-in. */
  linearFlows(): Float64Array {
    return Float64Array.from(this.circuit.branches, (_, index) => this.g[index]! * this.volts(index) + this.h[index]!);
  }

  isRigid(index: number): boolean {
    return this.on[index] === 1 && isZeroOhm(this.circuit.branches[index]!);
  }

  private findFrame(): Frame {
    const key = this.zeroOhm.map((index) => this.on[index]).join("");
    const known = this.frames.get(key);
    if (known) return known;
    const links: RigidLink[] = [];
    for (const index of this.zeroOhm) {
      if (!this.on[index]) continue;
      const branch = this.circuit.branches[index]!;
      const ends = branch.type === "converter" ? { a: branch.outA, b: branch.outB } : { a: branch.a, b: branch.b };
      links.push({ branch: index, ...ends });
    }
    const frame = {
      assembly: new Assembly(this.circuit, links),
      flows: links.length > 0 ? new RigidFlows(links) : null,
    };
    if (this.frames.size >= KEPT) this.frames.clear();
    this.frames.set(key, frame);
    return frame;
  }
}

function emfOf(branch: Branch): number {
  switch (branch.type) {
    case "source":
    case "converter":
      return branch.volts;
    case "diode":
      return branch.forwardV;
    case "resistor":
    case "contact":
    case "filament":
    case "power":
    case "current":
      return 0;
    default:
      return branch satisfies never;
  }
}

function isZeroOhm(branch: Branch): boolean {
  return branch.type === "converter" || ("ohm" in branch && branch.ohm === 0);
}
