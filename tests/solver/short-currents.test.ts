import { describe, expect, it } from "vitest";
import { createSolver, solveDc } from "../../core/solver/index.ts";
import type { Circuit, State } from "../../core/circuit/index.ts";
import { benchCircuit } from "../bench/solver-circuits.ts";
import { Wiring } from "./wiring.ts";

/** Current through a real wire laid from the node to its zero, loads and converters cut away: the slow way to the same number. */
function shortOneByOne(circuit: Circuit, state: State, node: number, zero: number): number {
  const isLoad = (type: string): boolean => ["power", "current", "filament", "converter"].includes(type);
  const kept = circuit.branches.flatMap((branch, index) => (isLoad(branch.type) ? [] : [{ branch, index }]));
  const shorted: Circuit = {
    nodeCount: circuit.nodeCount,
    branches: [...kept.map(({ branch }) => branch), { type: "resistor", a: node, b: zero, ohm: 0 }],
    relays: [],
    references: circuit.references,
  };
  const closed = Uint8Array.from([...kept.map(({ index }) => state.closed[index]!), 1]);
  const solution = solveDc(shorted, { closed, sourceV: null });
  return solution.status === "ok" ? Math.abs(solution.branchA[kept.length]!) : -1;
}

describe("dead-short currents", () => {
  it("divides the source's volts by every resistance on the way", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.01);
    w.wire("+", "x", 0.02);
    w.contact("x", "y", 0.01);
    w.power("y", "0", 50);
    const amps = createSolver(w.circuit("0")).shortCurrents(w.state());
    expect(amps[w.node("+")]).toBeCloseTo(1200, 9);
    expect(amps[w.node("x")]).toBeCloseTo(400, 9);
    expect(amps[w.node("y")]).toBeCloseTo(300, 9);
    expect(amps[w.node("0")]).toBe(-1);
  });

  it("says none where no source reaches and where nothing would limit it", () => {
    const w = new Wiring();
    w.source("+", "0", 12);
    w.contact("+", "x", 0.01, false);
    w.wire("lone", "alone", 1);
    const amps = createSolver(w.circuit("0")).shortCurrents(w.state());
    for (const name of ["+", "x", "lone", "0"]) expect(amps[w.node(name)]).toBe(-1);
  });

  it("does not get past a load, nor past a branch named to be left out", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.01);
    w.power("+", "behind-load", 50);
    const coil = w.wire("+", "behind-coil", 90);
    const leaveOut = new Uint8Array(w.branches.length);
    leaveOut[coil] = 1;
    const solver = createSolver(w.circuit("0"));
    expect(solver.shortCurrents(w.state())[w.node("behind-coil")]).toBeCloseTo(12 / 90.01, 9);
    expect(solver.shortCurrents(w.state(), { leaveOut })[w.node("behind-coil")]).toBe(-1);
    expect(solver.shortCurrents(w.state())[w.node("behind-coil")]).toBeCloseTo(12 / 90.01, 9);
    expect(solver.shortCurrents(w.state())[w.node("behind-load")]).toBe(-1);
  });

  it("counts the forward volts of a diode that only the short makes conduct", () => {
    const w = new Wiring();
    w.source("+", "0", 12.7, 0.02);
    w.diode("+", "x", 0.7, 0.01);
    w.wire("x", "y", 0.03);
    w.diode("y", "back", 0.7, 0.01);
    w.source("back", "0", 24, 1);
    const amps = createSolver(w.circuit("0")).shortCurrents(w.state());
    expect(amps[w.node("x")]).toBeCloseTo(12 / 0.03, 6);
    expect(amps[w.node("y")]).toBeCloseTo(12 / 0.06, 6);
    // 24 A of its own source and what the other brings through both diodes.
    expect(amps[w.node("back")]).toBeCloseTo(24 + (12.7 - 1.4) / 0.07, 6);
  });

  it("takes relays as solved unless their positions are given", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.01);
    const coil = w.wire("+", "0", 90);
    const make = w.contact("+", "x", 0.02);
    w.relay(coil, 7, 1.5, [make]);
    const solver = createSolver(w.circuit("0"));
    expect(solver.shortCurrents(w.state())[w.node("x")]).toBeGreaterThan(390);
    expect(solver.shortCurrents(w.state(), { pulledIn: new Uint8Array(1) })[w.node("x")]).toBe(-1);
  });

  it("agrees with shorting one node after the other", () => {
    const { circuit, state, contacts } = benchCircuit(80, 7, "power");
    state.closed[contacts[1]!] = 0;
    const withDiodes: Circuit = {
      ...circuit,
      branches: circuit.branches.map((branch, index) =>
        branch.type === "resistor" && index % 9 === 4
          ? { type: "diode", a: branch.a, b: branch.b, forwardV: 0.7, ohm: 0.01 }
          : branch,
      ),
    };
    for (const one of [circuit, withDiodes]) {
      const amps = createSolver(one).shortCurrents(state);
      const off = Array.from(amps, (got, node) => {
        const slow = shortOneByOne(one, state, node, one.references[0]!);
        return slow < 1e-6 ? Number(got !== -1) : Math.abs(got / slow - 1);
      });
      expect(Math.max(...off)).toBeLessThan(1e-9);
    }
  });
});

describe("ideal diodes in a short", () => {
  it("count with their forward volts, and alone limit nothing", () => {
    const w = new Wiring();
    w.source("+", "0", 12.7);
    w.diode("+", "x", 0.7, 0);
    w.wire("x", "y", 0.1);
    const amps = createSolver(w.circuit("0")).shortCurrents(w.state());
    expect(amps[w.node("y")]).toBeCloseTo(120, 5);
    expect(amps[w.node("x")]).toBe(-1);
  });
});
