/**
 * One bit for each combination of a group's controls: the set of combinations in which something holds. All operations work on
 * 32 combinations at a time, so that a question about every combination costs little more than one about a single one.
 */
export class TruthTable {
  readonly size: number;
  readonly words: Uint32Array;

  constructor(size: number) {
    this.size = size;
    this.words = new Uint32Array((size + 31) >>> 5);
  }

  static full(size: number): TruthTable {
    const table = new TruthTable(size);
    table.words.fill(0xffffffff);
    const rest = size & 31;
    if (rest !== 0) table.words[table.words.length - 1] = 2 ** rest - 1;
    return table;
  }

  has(combination: number): boolean {
    return ((this.words[combination >>> 5]! >>> (combination & 31)) & 1) === 1;
  }

  add(combination: number): void {
    this.words[combination >>> 5]! |= 1 << (combination & 31);
  }

  isEmpty(): boolean {
    return this.words.every((word) => word === 0);
  }

  equals(other: TruthTable): boolean {
    return this.words.every((word, index) => word === other.words[index]);
  }

  /** Adds `from` where `gate` holds and `block` does not; true when that added anything. `null`: no such limit. */
  flow(from: TruthTable, gate: TruthTable | null, block: TruthTable | null): boolean {
    let changed = false;
    for (let index = 0; index < this.words.length; index++) {
      let arriving = from.words[index]!;
      if (gate) arriving &= gate.words[index]!;
      if (block) arriving &= ~block.words[index]!;
      const next = (this.words[index]! | arriving) >>> 0;
      if (next !== this.words[index]) {
        this.words[index] = next;
        changed = true;
      }
    }
    return changed;
  }

  and(other: TruthTable): TruthTable {
    return this.combined(other, (one, two) => one & two);
  }

  or(other: TruthTable): TruthTable {
    return this.combined(other, (one, two) => one | two);
  }

  without(other: TruthTable): TruthTable {
    return this.combined(other, (one, two) => one & ~two);
  }

  private combined(other: TruthTable, operation: (one: number, two: number) => number): TruthTable {
    const result = new TruthTable(this.size);
    for (let index = 0; index < this.words.length; index++) {
      result.words[index] = operation(this.words[index]!, other.words[index]!);
    }
    return result;
  }
}
