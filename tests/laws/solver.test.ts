import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Branch, Circuit, Solution, State } from "../../core/circuit/index.ts";
import { createSolver, solveDc } from "../../core/solver/index.ts";
import { lawCases } from "./solver-circuits.ts";

const anything = lawCases(true);
const linear = lawCases(false);

/** Greatest current in the solution: what a balance is measured against. */
function largestA({ branchA }: Solution): number {
  return branchA.reduce((most, amps) => Math.max(most, Math.abs(amps)), 0);
}

/** Greatest difference, as a part of the greatest value wanted (or of `floor`, where all are smaller). */
function difference(got: ArrayLike<number>, wanted: ArrayLike<number>, floor: number): number {
  const scale = Math.max(floor, ...Array.from(wanted, Math.abs));
  return Math.max(0, ...Array.from(wanted, (value, i) => Math.abs(got[i]! - value))) / scale;
}

describe("laws of the solver", () => {
  it("current balances at every node and power over the whole", () => {
    fc.assert(
      fc.property(anything, ({ circuit, state }) => {
        const solution = solveDc(circuit, state);
        fc.pre(solution.status === "ok");
        const most = largestA(solution);
        expect(solution.residualA).toBeLessThan(1e-11 + 1e-13 * most);
        expect(solution.residualW).toBeLessThan(1e-9 + 1e-11 * most * 30);
      }),
      { numRuns: 150 },
    );
  });

  it("nothing that comes out is NaN or infinite, and without a solution all is 0", () => {
    fc.assert(
      fc.property(anything, ({ circuit, state }) => {
        const solution = solveDc(circuit, state);
        const { nodeV, branchA, outputA, residualA, residualW, known, status } = solution;
        const numbers = [...nodeV, ...branchA, ...outputA, ...known, residualW];
        expect(numbers.every(status === "ok" ? Number.isFinite : (value) => value === 0)).toBe(true);
        expect(Number.isFinite(residualA)).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  it("what was solved before doesn't show: flick by flick the same as afresh, bit for bit", () => {
    const flicks = fc.array(fc.tuple(fc.nat(), fc.boolean()), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(anything, flicks, ({ circuit, state, flickable }, sequence) => {
        fc.pre(flickable.length > 0);
        const solver = createSolver(circuit);
        const closed = state.closed.slice();
        const sourceV = Float64Array.from(circuit.branches, (branch) => (branch.type === "source" ? branch.volts : 0));
        for (const [pick, changesVolts] of sequence) {
          const index = flickable[pick % flickable.length]!;
          if (changesVolts && circuit.branches[index]!.type === "source")
            sourceV[index] = sourceV[index]! > 13 ? 12.1 : 13.7;
          else closed[index] = 1 - closed[index]!;
          const now: State = { closed: closed.slice(), sourceV: sourceV.slice() };
          expect(solver.solve(now)).toStrictEqual(solveDc(circuit, now));
          expect(solver.shortCurrents(now)).toStrictEqual(createSolver(circuit).shortCurrents(now));
        }
      }),
      { numRuns: 60 },
    );
  });

  it("other node numbers and another order of branches change nothing", () => {
    fc.assert(
      fc.property(linear, fc.nat(), ({ circuit, state }, seed) => {
        const solution = solveDc(circuit, state);
        fc.pre(solution.status === "ok");
        const { moved, movedState, nodeTo, branchTo } = renumbered(circuit, state, seed);
        const other = solveDc(moved, movedState);
        expect(other.status).toBe("ok");
        const nodeV = solution.nodeV.map((_, node) => other.nodeV[nodeTo[node]!]!);
        const branchA = solution.branchA.map((_, branch) => other.branchA[branchTo[branch]!]!);
        expect(difference(nodeV, solution.nodeV, 12)).toBeLessThan(1e-12);
        // A milliohm shows the last bit of 12 V as 2e-12 A.
        expect(difference(branchA, solution.branchA, 10)).toBeLessThan(1e-12);
        expect(solution.known.map((_, node) => other.known[nodeTo[node]!]!)).toEqual(solution.known);
      }),
      { numRuns: 120 },
    );
  });

  it("twice the volts of every source of a linear circuit make twice of everything", () => {
    fc.assert(
      fc.property(linear, ({ circuit, state }) => {
        const once = solveDc(circuit, state);
        fc.pre(once.status === "ok");
        const sourceV = Float64Array.from(circuit.branches, (branch) =>
          branch.type === "source" ? 2 * branch.volts : 0,
        );
        const twice = solveDc(circuit, { closed: state.closed, sourceV });
        const doubled = (values: Float64Array): Float64Array => values.map((value) => 2 * value);
        expect(difference(twice.nodeV, doubled(once.nodeV), 12)).toBeLessThan(1e-12);
        expect(difference(twice.branchA, doubled(once.branchA), 10)).toBeLessThan(1e-12);
      }),
      { numRuns: 100 },
    );
  });

  it("every element keeps its own law", () => {
    fc.assert(
      fc.property(anything, ({ circuit, state }) => {
        const solution = solveDc(circuit, state);
        fc.pre(solution.status === "ok");
        expect(circuit.branches.filter((branch, index) => !keepsItsLaw(branch, index, solution))).toEqual([]);
      }),
      { numRuns: 120 },
    );
  });
});

/** Whether a branch's volts and amps fit what it is; of an unknown network nothing is said. */
function keepsItsLaw(branch: Branch, index: number, { nodeV, branchA, active, known }: Solution): boolean {
  const volts = nodeV[branch.a]! - nodeV[branch.b]!;
  const amps = branchA[index]!;
  if (known[branch.a] === 0) return true;
  if (active[index] === 0) return amps === 0 && (branch.type !== "diode" || volts < branch.forwardV + 1e-9);
  const isNear = (value: number, wanted: number): boolean => Math.abs(value - wanted) < 1e-8;
  switch (branch.type) {
    case "resistor":
    case "contact":
      return isNear(volts, amps * branch.ohm);
    case "source":
      return isNear(volts, branch.volts - amps * branch.ohm);
    case "diode":
      return amps > -1e-9 && isNear(volts, branch.forwardV + amps * branch.ohm);
    case "power": {
      const size = branch.eitherWay ? Math.abs(volts) : volts;
      const isWithin = size > (branch.minV ?? 0) - 1e-9 && size < (branch.maxV ?? Infinity) + 1e-9;
      return isWithin && isNear(volts * amps, branch.watts);
    }
    case "current":
      return Math.abs(amps) === branch.amps && (branch.eitherWay ? Math.abs(volts) : volts) > 1 - 1e-9;
    case "filament": {
      const byLaw = (branch.watts / branch.ratedV) * (Math.abs(volts) / branch.ratedV) ** 0.55;
      return Math.abs(volts) < 1e-3 || isNear(amps, Math.sign(volts) * byLaw);
    }
    case "converter":
      return true;
    default:
      return branch satisfies never;
  }
}

interface Renumbered {
  readonly moved: Circuit;
  readonly movedState: State;
  readonly nodeTo: readonly number[];
  readonly branchTo: readonly number[];
}

function renumbered({ nodeCount, branches, references }: Circuit, { closed }: State, seed: number): Renumbered {
  const shuffledBy = (count: number, step: number): number[] => {
    const keys = Array.from(
      { length: count },
      (_, i) => (Math.imul(i + 1, 0x9e3779b1 ^ (seed + step)) >>> 0) / 2 ** 32,
    );
    const order = keys.map((_, i) => i).sort((a, b) => keys[a]! - keys[b]! || a - b);
    const to: number[] = [];
    order.forEach((from, at) => (to[from] = at));
    return to;
  };
  const nodeTo = shuffledBy(nodeCount, 1);
  const branchTo = shuffledBy(branches.length, 2);
  const movedBranches: Branch[] = [];
  const movedClosed = new Uint8Array(branches.length);
  branches.forEach((branch, index) => {
    movedBranches[branchTo[index]!] = { ...branch, a: nodeTo[branch.a]!, b: nodeTo[branch.b]! };
    movedClosed[branchTo[index]!] = closed[index]!;
  });
  return {
    moved: { nodeCount, branches: movedBranches, relays: [], references: references.map((node) => nodeTo[node]!) },
    movedState: { closed: movedClosed, sourceV: null },
    nodeTo,
    branchTo,
  };
}
