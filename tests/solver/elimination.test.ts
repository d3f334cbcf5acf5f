import { afterEach, describe, expect, it, vi } from "vitest";
import { Elimination } from "../../core/solver/elimination.ts";
import { planElimination } from "../../core/solver/ordering.ts";
import { createSolver } from "../../core/solver/index.ts";
import { benchCircuit } from "../bench/solver-circuits.ts";

/** A ring of conductances with a chord and a tail, the vertex 0 held at zero. */
function ringed(): Elimination {
  const ends = [0, 1, 1, 2, 2, 3, 3, 4, 4, 0, 1, 3, 4, 5];
  const plan = planElimination(6, Int32Array.from(ends), [0]);
  const elimination = new Elimination(plan);
  for (let e = 0; e < ends.length; e += 2) {
    const positions = [plan.positionOf[ends[e]!]!, plan.positionOf[ends[e + 1]!]!].sort((a, b) => a - b);
    const [early, late] = positions as [number, number];
    elimination.setEdge(elimination.slotBetween(early, late), early, 1 + e, 0);
  }
  elimination.eliminate();
  return elimination;
}

afterEach(() => {
  vi.restoreAllMocks();
});

describe("elimination", () => {
  it("sees from each position the resistance that one ampere fed in there shows", () => {
    const elimination = ringed();
    const ohms = elimination.resistanceToZero();
    const oneByOne = ohms.map((_, position) => {
      const volts = new Float64Array(ohms.length);
      volts[position] = 1;
      elimination.respond(elimination.all, volts);
      return Number(volts[position]);
    });
    expect(Math.max(...ohms.map((ohm, k) => Math.abs(ohm - oneByOne[k]!)))).toBeLessThan(1e-15);
    expect(Math.max(...ohms)).toBeGreaterThan(0.1);
  });

  it("holds the last position of a network at the volts asked for", () => {
    const elimination = ringed();
    elimination.hold(elimination.plan.positionOf[0]!, 5);
    elimination.eliminate();
    const volts = new Float64Array(6);
    elimination.solveAll(volts, null);
    expect(Math.max(...volts.map((v) => Math.abs(v - 5)))).toBeLessThan(1e-14);
  });

  it("is done again along one path when one contact is flicked, not for the whole circuit", () => {
    const gather = vi.spyOn(Elimination.prototype as unknown as { gather(position: number): void }, "gather");
    const { circuit, state, contacts } = benchCircuit(1000, 4, "power");
    const solver = createSolver(circuit);
    solver.solve(state);
    expect(gather).toHaveBeenCalledTimes(circuit.nodeCount);
    gather.mockClear();
    state.closed[contacts[5]!] = 0;
    solver.solve(state);
    expect(gather.mock.calls.length).toBeGreaterThan(0);
    expect(gather.mock.calls.length).toBeLessThan(circuit.nodeCount / 10);
    gather.mockClear();
    solver.solve(state);
    expect(gather).not.toHaveBeenCalled();
  });
});
