/**
 * The circuit as it stands at one moment of a solve: which contacts are closed, which sources and converter outputs are
 * present, which diodes conduct, which loads draw, and every branch's linear stand-in. All other files of the solver
 * change this and ask it for volts; it keeps an assembly for every set of zero-ohm branches met so far.
 */
import type { Circuit } from "../circuit/index.ts";
import { Assembly } from "./assembly.ts";
import { BranchTable, KIND } from "./branch-table.ts";
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
  readonly table: BranchTable;
  /** 1: contact closed, source or converter output present, diode conducting, load drawing; always 1 for a resistor. */
  readonly on: Uint8Array;
  /** Volts of each source, diode (forward) and converter output as they are now; 0 for every other branch. */
  readonly emf: Float64Array;
  /** 1: taken out of the circuit altogether, ties included. */
  readonly absent: Uint8Array;
  /** The linear stand-in of each branch: current a to b = g (va - vb) + h, and of loads and converter inputs `extraA` more. */
  readonly g: Float64Array;
  readonly h: Float64Array;
  readonly extraA: Float64Array;
  /** Volts of nodes: where watched branches end after `solveLinear`, of all after `complete`. */
  readonly nodeV: Float64Array;
  /** Room for the amps that leave each node, for whoever sums them up next. */
  readonly outOf: Float64Array;
  private readonly frames = new Map<string, Frame>();
  private frame: Frame | null = null;
  private frameIsStale = true;
  private emfChanged = true;
  private isSolved = false;
  private isComplete = false;
  private readonly changed: number[] = [];

  constructor(circuit: Circuit) {
    this.circuit = circuit;
    const table = new BranchTable(circuit);
    this.table = table;
    this.on = new Uint8Array(table.count);
    this.emf = new Float64Array(table.count);
    this.absent = new Uint8Array(table.count);
    this.g = new Float64Array(table.count);
    this.h = new Float64Array(table.count);
    this.extraA = new Float64Array(table.count);
    this.nodeV = new Float64Array(circuit.nodeCount);
    this.outOf = new Float64Array(circuit.nodeCount);
    for (let index = 0; index < table.count; index++) {
      const branch = circuit.branches[index]!;
      if (branch.type === "source" || branch.type === "converter") this.emf[index] = branch.volts;
      else if (branch.type === "diode") this.emf[index] = branch.forwardV;
      if (branch.type === "diode") this.g[index] = TIE_S;
      else if (branch.type === "resistor") {
        this.on[index] = 1;
        if (branch.ohm > 0) this.g[index] = 1 / branch.ohm;
      }
    }
  }

  /** Switches a resistor, contact, source, diode or converter output; loads have their draw set by `setDraw` as well. */
  set(index: number, on: boolean): void {
    if (this.absent[index] === 1) return;
    const { kind, ohm, isZeroOhm } = this.table;
    const value = on ? 1 : 0;
    if (isZeroOhm[index] === 1 && this.on[index] !== value) this.frameIsStale = true;
    this.on[index] = value;
    if (kind[index] === KIND.diode && !on) this.setDraw(index, TIE_S, 0);
    else if (kind[index]! <= KIND.diode) {
      const g = on && ohm[index]! > 0 ? 1 / ohm[index]! : 0;
      this.setDraw(index, g, g === 0 ? 0 : -g * this.emf[index]!);
    }
  }

  /** Takes a branch out of the circuit, or puts it back as it was made: a resistor in, all else off. */
  setAbsent(index: number, absent: boolean): void {
    if ((this.absent[index] === 1) === absent) return;
    this.absent[index] = 0;
    this.set(index, !absent && this.table.kind[index] === KIND.resistor);
    if (absent) this.setDraw(index, 0, 0);
    this.absent[index] = absent ? 1 : 0;
  }

  /** Sets a branch's line: current a to b = g (va - vb) + h, and nothing extra. */
  setDraw(index: number, g: number, h: number): void {
    if (this.extraA[index] !== 0) this.setExtra(index, 0);
    if (this.g[index] === g && this.h[index] === h) return;
    this.g[index] = g;
    this.h[index] = h;
    this.changed.push(index);
    this.isSolved = false;
  }

  /** Lets a load or converter input draw this much more, a to b, than its line says. Cheaper than another line: nothing is eliminated again. */
  setExtra(index: number, amps: number): void {
    this.extraA[index] = amps;
    this.isSolved = false;
  }

  setEmf(index: number, volts: number): void {
    if (this.emf[index] === volts) return;
    this.emf[index] = volts;
    if (this.table.isZeroOhm[index] === 1) this.emfChanged = true;
    if (this.on[index] === 1) this.set(index, true);
  }

  /** Volts across a branch, a over b: of a watched one after `solveLinear`, of any after `complete`. */
  volts(index: number): number {
    return this.nodeV[this.table.a[index]!]! - this.nodeV[this.table.b[index]!]!;
  }

  /** Solves the linear stand-ins for the volts of watched branches. Gives the branches of ideal sources that disagree, or `null`. */
  solveLinear(): readonly number[] | null {
    let reload = this.emfChanged;
    if (this.frameIsStale || this.frame === null) {
      this.frame = this.findFrame();
      this.frameIsStale = false;
      reload = true;
    }
    if (!reload && this.isSolved) return null;
    const { assembly } = this.frame;
    if (reload) {
      const conflict = assembly.clusters.setVolts(this.emf);
      this.emfChanged = conflict !== null;
      if (conflict) return conflict;
      assembly.loadAll(this);
    } else for (const index of this.changed) assembly.load(index, this);
    this.changed.length = 0;
    assembly.solve(this.nodeV, this.extraA);
    this.isSolved = true;
    this.isComplete = false;
    return null;
  }

  /**
   * Makes what draws beside the lines part of them, where some of it could not be told from rounding: what hangs on ties alone then
   * feels it too, if only by volts.
   */
  foldExtra(): void {
    if (!this.assembly.elimination.hasCut) return;
    for (const index of this.table.draws) {
      const extraA = this.extraA[index]!;
      if (extraA !== 0) this.setDraw(index, this.g[index]!, this.h[index]! + extraA);
    }
    this.solveLinear();
  }

  /** Fills in the volts that `solveLinear` left for later. */
  complete(): void {
    if (!this.isComplete) this.assembly.complete(this.nodeV);
    this.isComplete = true;
  }

  get assembly(): Assembly {
    return this.frame!.assembly;
  }

  /** Whether the branch holds its ends (of a converter: of its output) together rigidly at present. */
  isRigid(index: number): boolean {
    return this.table.isZeroOhm[index] === 1 && this.on[index] === 1;
  }

  /**
   * Amps a to b of every zero-ohm branch (of a converter: outA to outB through its output), 0 for all others, or `null` when there
   * are none. `outOf` gives the amps that leave each node through all other branches.
   */
  rigidFlows(outOf: Float64Array): Float64Array | null {
    const { flows } = this.frame!;
    if (!flows) return null;
    const rigidA = new Float64Array(this.table.count);
    flows.fill(outOf, rigidA);
    return rigidA;
  }

  /** Amps that leave each node through all but rigid branches, by their lines. */
  linearOutOf(): Float64Array {
    this.complete();
    const { outOf } = this;
    const { a, b, count } = this.table;
    outOf.fill(0);
    for (let i = 0; i < count; i++) {
      const amps = this.g[i]! * this.volts(i) + this.h[i]! + this.extraA[i]!;
      outOf[a[i]!]! += amps;
      outOf[b[i]!]! -= amps;
    }
    return outOf;
  }

  private findFrame(): Frame {
    let key = "";
    for (const index of this.table.zeroOhm) key += this.on[index] === 1 ? "1" : "0";
    const known = this.frames.get(key);
    if (known) return known;
    const links = this.table.zeroOhm.filter((index) => this.on[index] === 1).map((index) => this.linkOf(index));
    const frame = {
      assembly: new Assembly(this.table, this.circuit.references, links),
      flows: links.length > 0 ? new RigidFlows(links) : null,
    };
    if (this.frames.size >= KEPT) this.frames.clear();
    this.frames.set(key, frame);
    return frame;
  }

  /** The ends a zero-ohm branch holds together: of a converter, its output's. */
  linkOf(index: number): RigidLink {
    const branch = this.circuit.branches[index]!;
    return branch.type === "converter"
      ? { branch: index, a: branch.outA, b: branch.outB }
      : { branch: index, a: branch.a, b: branch.b };
  }
}
