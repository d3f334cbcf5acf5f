import { all, create, type BigNumber } from "mathjs";
import { describe, expect, it } from "vitest";
import type { Circuit, State } from "../../core/circuit/index.ts";
import { solveDc } from "../../core/solver/index.ts";
import { benchCircuit } from "../bench/solver-circuits.ts";

const math = create(all!, { number: "BigNumber", precision: 50 });

/** Node volts of resistors, contacts and sources with resistance, in fifty digits, by elimination on the full nodal matrix. */
function exactVolts({ nodeCount, branches, references }: Circuit, { closed }: State): BigNumber[] {
  const big = (value: number): BigNumber => math.bignumber(value);
  const rows = Array.from({ length: nodeCount }, () => Array.from({ length: nodeCount + 1 }, () => big(0)));
  const add = (row: number, column: number, value: BigNumber): void => {
    rows[row]![column] = rows[row]![column]!.plus(value);
  };
  branches.forEach((branch, index) => {
    if (!("ohm" in branch) || (branch.type !== "resistor" && closed[index] === 0)) return;
    const g = big(1).div(big(branch.ohm));
    const { a, b } = branch;
    add(a, a, g);
    add(b, b, g);
    add(a, b, g.neg());
    add(b, a, g.neg());
    if (branch.type !== "source") return;
    add(a, nodeCount, g.times(big(branch.volts)));
    add(b, nodeCount, g.times(big(branch.volts)).neg());
  });
  const zero = references[0]!;
  rows[zero] = rows[zero]!.map((_, column) => big(column === zero ? 1 : 0));
  for (let k = 0; k < nodeCount; k++) {
    for (let row = 0; row < nodeCount; row++) {
      if (row === k || rows[row]![k]!.isZero()) continue;
      const factor = rows[row]![k]!.div(rows[k]![k]!);
      for (let column = k; column <= nodeCount; column++) {
        if (!rows[k]![column]!.isZero()) add(row, column, rows[k]![column]!.times(factor).neg());
      }
    }
  }
  return rows.map((row, k) => row[nodeCount]!.div(row[k]!));
}

describe("precision", () => {
  it("volts are within 2e-14 V of the exact ones on a loaded vehicle", () => {
    for (const seed of [1, 2, 3]) {
      const { circuit, state } = benchCircuit(70, seed, "resistor");
      const { nodeV, residualA } = solveDc(circuit, state);
      const off = exactVolts(circuit, state).map((exact, node) => exact.minus(nodeV[node]!).abs().toNumber());
      expect(Math.max(...off)).toBeLessThan(2e-14);
      expect(residualA).toBeLessThan(1e-11);
    }
  });

  it("an island of copper held by picosiemens is as exact as the rest", () => {
    const ohm = 1e12;
    const branches = [
      { type: "source", a: 0, b: 1, volts: 12.6, ohm: 0.006 },
      { type: "resistor", a: 0, b: 2, ohm },
      { type: "source", a: 3, b: 2, volts: 24.4, ohm: 0.004 },
      { type: "resistor", a: 3, b: 4, ohm: 0.0011 },
      { type: "resistor", a: 4, b: 2, ohm: 0.07 },
      { type: "resistor", a: 4, b: 5, ohm },
      { type: "resistor", a: 5, b: 1, ohm: 2 * ohm },
    ] as const;
    const circuit: Circuit = { nodeCount: 6, branches, relays: [], references: [1] };
    const state: State = { closed: new Uint8Array(branches.length).fill(1), sourceV: null };
    const { nodeV } = solveDc(circuit, state);
    const off = exactVolts(circuit, state).map((exact, node) => exact.minus(nodeV[node]!).abs().toNumber());
    expect(Math.max(...off)).toBeLessThan(2e-14);
  });
});
