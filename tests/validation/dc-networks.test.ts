import { Matrix, solve as solveDense } from "ml-matrix";
import { lusolve, lup, matrix } from "mathjs";
import { describe, expect, it } from "vitest";
import type { Branch, Circuit } from "../../core/circuit/index.ts";
import { Wiring } from "../solver/wiring.ts";
import { poweredLoads, poweredRun, publishedNetworks } from "./dc-networks.ts";
import { reading, solveNetlist } from "./solved-netlist.ts";

/**
 * Node volts by modified nodal analysis on a full matrix: one row for each node but zero and one for each source. Written without the
 * solver's means, for circuits of resistors and sources.
 */
function matrixOf({ nodeCount, branches, references }: Circuit): {
  rows: number[][];
  right: number[];
  place: (node: number) => number;
} {
  const zero = references[0]!;
  const place = (node: number): number => (node === zero ? -1 : node < zero ? node : node - 1);
  const sources = branches.filter((branch) => branch.type === "source");
  const size = nodeCount - 1 + sources.length;
  const rows = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  const right = Array.from({ length: size }, () => 0);
  const put = (row: number, column: number, value: number): void => {
    if (row >= 0 && column >= 0) rows[row]![column]! += value;
  };
  const stamp = (branch: Branch): void => {
    const a = place(branch.a);
    const b = place(branch.b);
    if (branch.type === "resistor") {
      put(a, a, 1 / branch.ohm);
      put(b, b, 1 / branch.ohm);
      put(a, b, -1 / branch.ohm);
      put(b, a, -1 / branch.ohm);
    } else if (branch.type === "source") {
      const row = nodeCount - 1 + sources.indexOf(branch);
      put(row, a, 1);
      put(row, b, -1);
      put(row, row, branch.ohm);
      put(a, row, -1);
      put(b, row, 1);
      right[row] = branch.volts;
    }
  };
  branches.forEach(stamp);
  return { rows, right, place };
}

describe("published networks", () => {
  for (const network of publishedNetworks) {
    it(`${network.title}: as printed`, () => {
      const read = solveNetlist(network.netlist);
      expect(read.solution.status).toBe("ok");
      const off = Object.entries(network.printed).map(([printed, value]) => Math.abs(reading(read, printed) - value));
      expect(Math.max(...off)).toBeLessThanOrEqual(network.tolerance);
    });
  }

  it("agree with two matrix solvers on an equation system put together apart", () => {
    for (const { netlist } of publishedNetworks.filter((network) => !network.netlist.includes("D D1"))) {
      const { circuit, solution } = solveNetlist(netlist);
      const { rows, right, place } = matrixOf(circuit);
      const dense = solveDense(new Matrix(rows), Matrix.columnVector(right)).to1DArray();
      const sparse = (lusolve(lup(matrix(rows, "sparse")), right).valueOf() as number[][]).flat();
      const off = Array.from(solution.nodeV, (volts, node) => {
        const row = place(node);
        return row < 0 ? Math.abs(volts) : Math.max(Math.abs(volts - dense[row]!), Math.abs(volts - sparse[row]!));
      });
      // A megavolt among the unknowns costs the matrices digits.
      expect(Math.max(...off)).toBeLessThan(netlist.includes("I I1") ? 3e-8 : 3e-12);
    }
  });
});

describe("constant powers", () => {
  it("behind a resistance take the higher root, or none where there is none", () => {
    for (const { volts, ohm, watts, highV } of poweredLoads) {
      const w = new Wiring();
      w.source("+", "0", volts);
      w.wire("+", "x", ohm);
      const load = w.power("x", "0", watts);
      const solution = w.solve();
      expect(solution.active[load]).toBe(highV === null ? 0 : 1);
      expect(Math.abs(w.volts(solution, "x") - (highV ?? volts))).toBeLessThan(1e-9);
    }
  });

  it("matched to their wiring stand at half the volts", () => {
    const w = new Wiring();
    w.source("t", "0", 11.2);
    w.wire("t", "n", 0.8);
    const load = w.power("n", "0", 39.2);
    const solution = w.solve();
    // At the very edge both roots meet and volts hang on the last bit of everything: half the digits.
    expect(solution.active[load]).toBe(1);
    expect(Math.abs(w.volts(solution, "n") - 5.6)).toBeLessThan(1e-6);
  });

  it("along one run end where sweeping back and forth ends", () => {
    const w = new Wiring();
    w.source("n0", "0", poweredRun.volts);
    poweredRun.segmentsOhm.forEach((ohm, i) => w.wire(`n${i}`, `n${i + 1}`, ohm));
    poweredRun.watts.forEach((watts, i) => w.power(`n${i + 1}`, "0", watts));
    const solution = w.solve();
    const off = poweredRun.nodeV.map((volts, i) => Math.abs(w.volts(solution, `n${i + 1}`) - volts));
    expect(Math.max(...off)).toBeLessThan(1e-8);
  });
});
