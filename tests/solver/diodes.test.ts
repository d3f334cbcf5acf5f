import { describe, expect, it } from "vitest";
import { Wiring } from "./wiring.ts";

describe("a diode", () => {
  it("conducts as its forward volts behind its resistance", () => {
    const w = new Wiring();
    w.source("+", "0", 12);
    const diode = w.diode("+", "x", 0.7, 0.3);
    w.wire("x", "0", 11);
    const { branchA, active } = w.solve();
    expect(branchA[diode]).toBeCloseTo(1, 14);
    expect(active[diode]).toBe(1);
  });

  it("blocks the other way, and just below its forward volts", () => {
    const w = new Wiring();
    w.source("+", "0", 0.69, 0.1);
    const under = w.diode("+", "0");
    const back = w.diode("0", "+");
    const solution = w.solve();
    expect([solution.branchA[under], solution.branchA[back]]).toEqual([0, 0]);
    expect([solution.active[under], solution.active[back]]).toEqual([0, 0]);
  });

  it("without resistance clamps exactly", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 1);
    const diode = w.diode("+", "0", 0.7, 0);
    const solution = w.solve();
    expect(w.volts(solution, "+")).toBe(0.7);
    expect(solution.branchA[diode]).toBeCloseTo(11.3, 13);
  });

  it("without resistance leaves the current to one beside it that needs less", () => {
    for (const order of [
      [0.3, 0.7],
      [0.7, 0.3],
    ] as const) {
      const w = new Wiring();
      w.source("+", "0", 12, 1);
      const diodes = order.map((forwardV) => w.diode("+", "0", forwardV, 0));
      const solution = w.solve();
      expect(w.volts(solution, "+")).toBe(0.3);
      expect(solution.branchA[diodes[order.indexOf(0.3)]!]).toBeCloseTo(11.7, 13);
      expect(solution.branchA[diodes[order.indexOf(0.7)]!]).toBe(0);
    }
  });

  it("without resistance across an ideal source is a contradiction", () => {
    const w = new Wiring();
    const source = w.source("+", "0", 12);
    const diode = w.diode("+", "0", 0.7, 0);
    const solution = w.solve();
    expect(solution.status).toBe("contradictory");
    expect(new Set(solution.conflict)).toEqual(new Set([source, diode]));
  });

  it("feeds a load from whichever source stands higher", () => {
    const w = new Wiring();
    w.source("a", "0", 12.6, 0.05);
    w.source("b", "0", 12.9, 0.05);
    const fromA = w.diode("a", "x");
    const fromB = w.diode("b", "x");
    const load = w.power("x", "0", 20);
    const solution = w.solve();
    expect(solution.branchA[fromA]).toBe(0);
    expect(solution.branchA[fromB]).toBeCloseTo(solution.branchA[load]!, 12);
  });

  it("starts to conduct when a load pulls its far side down", () => {
    const w = new Wiring();
    w.source("a", "0", 12.6, 0.05);
    w.source("b", "0", 12.6, 0.5);
    const bridge = w.diode("a", "b");
    w.power("b", "0", 60);
    const { status, branchA, active, residualA } = w.solve();
    expect(status).toBe("ok");
    expect(active[bridge]).toBe(1);
    expect(branchA[bridge]).toBeGreaterThan(1);
    expect(residualA).toBeLessThan(1e-11);
  });
});

describe("many diodes", () => {
  it("of a full bridge feed the load the right way round from either polarity", () => {
    for (const volts of [12, -12]) {
      const w = new Wiring();
      w.source("a", "b", volts);
      w.diode("a", "+", 0.7, 0.01);
      w.diode("b", "+", 0.7, 0.01);
      w.diode("-", "a", 0.7, 0.01);
      w.diode("-", "b", 0.7, 0.01);
      const load = w.wire("+", "-", 10);
      expect(w.solve("b").branchA[load]).toBeCloseTo(10.6 / 10.02, 12);
    }
  });

  it("in a long ladder settle", () => {
    const w = new Wiring();
    w.source("n0", "0", 40, 0.1);
    for (let i = 0; i < 40; i++) {
      w.diode(`n${i}`, `n${i + 1}`, 0.7, 0.01);
      w.wire(`n${i + 1}`, "0", 20 + i);
      w.diode("0", `n${i + 1}`, 0.7, 0.01);
    }
    const { status, active, residualA } = w.solve();
    expect(status).toBe("ok");
    expect(active.reduce((sum, on) => sum + on, 0)).toBeGreaterThan(60);
    expect(residualA).toBeLessThan(1e-10);
  });
});
