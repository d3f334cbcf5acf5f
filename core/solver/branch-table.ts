/**
 * The branches of a circuit as columns of numbers: what the loops over all branches read, thousands of times a second.
 */
import type { Branch, Circuit } from "../circuit/index.ts";

/** Numbers that stand for the types of branch. */
export const KIND = {
  resistor: 0,
  contact: 1,
  source: 2,
  diode: 3,
  filament: 4,
  power: 5,
  current: 6,
  converter: 7,
} as const satisfies Record<Branch["type"], number>;

export class BranchTable {
  readonly count: number;
  readonly nodeCount: number;
  readonly branches: readonly Branch[];
  readonly kind: Uint8Array;
  readonly a: Int32Array;
  readonly b: Int32Array;
  /** Resistance; of loads and converters, which have none, infinite. */
  readonly ohm: Float64Array;
  /** 1: holds its ends rigidly while it is on; zero-ohm branches and the output of converters. */
  readonly isZeroOhm: Uint8Array;
  readonly sources: number[] = [];
  readonly contacts: number[] = [];
  readonly diodes: number[] = [];
  readonly loads: number[] = [];
  readonly converters: number[] = [];
  /** Loads and converters: what takes in a current that hangs on its volts in its own way. */
  readonly draws: number[] = [];
  /** Branches whose volts decide something while a solve goes on: loads, converters, diodes and coils. */
  readonly watched: readonly number[];
  /** Branches that can be rigid. */
  readonly zeroOhm: number[] = [];

  constructor({ branches, nodeCount, relays }: Circuit) {
    this.count = branches.length;
    this.nodeCount = nodeCount;
    this.branches = branches;
    this.kind = new Uint8Array(this.count);
    this.a = new Int32Array(this.count);
    this.b = new Int32Array(this.count);
    this.ohm = new Float64Array(this.count);
    this.isZeroOhm = new Uint8Array(this.count);
    for (let i = 0; i < this.count; i++) this.enter(i, branches[i]!);
    this.watched = [...this.draws, ...this.diodes, ...relays.map(({ coil }) => coil)];
  }

  private enter(index: number, branch: Branch): void {
    this.kind[index] = KIND[branch.type];
    this.a[index] = branch.a;
    this.b[index] = branch.b;
    this.ohm[index] = Infinity;
    switch (branch.type) {
      case "resistor":
        break;
      case "contact":
        this.contacts.push(index);
        break;
      case "source":
        this.sources.push(index);
        break;
      case "diode":
        this.diodes.push(index);
        break;
      case "filament":
      case "power":
      case "current":
        this.loads.push(index);
        this.draws.push(index);
        return;
      case "converter":
        this.converters.push(index);
        this.draws.push(index);
        this.markZeroOhm(index);
        return;
      default:
        return branch satisfies never;
    }
    this.ohm[index] = branch.ohm;
    if (branch.ohm === 0) this.markZeroOhm(index);
  }

  private markZeroOhm(index: number): void {
    this.isZeroOhm[index] = 1;
    this.zeroOhm.push(index);
  }
}
