import { describe, expect, it } from "vitest";
import { Wiring } from "./wiring.ts";

describe("a converter", () => {
  it("takes its output's watts over its efficiency, in a network of its own", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.02);
    const converter = w.converter("+", "0", "o+", "o-", 24, 0.8);
    const load = w.wire("o+", "o-", 12);
    const solution = w.solve("0", "o-");
    const volts = (12 + Math.sqrt(144 - 4 * 0.02 * 60)) / 2;
    expect(w.volts(solution, "o+")).toBe(24);
    expect(solution.branchA[load]).toBeCloseTo(2, 14);
    expect(solution.outputA[converter]).toBeCloseTo(2, 14);
    expect(w.volts(solution, "+")).toBeCloseTo(volts, 12);
    expect(solution.branchA[converter]).toBeCloseTo(60 / volts, 11);
    expect(solution.network[w.node("o+")]).not.toBe(solution.network[w.node("+")]);
    expect(solution.residualW).toBeLessThan(1e-9);
  });

  it("supplies one that supplies another", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.02);
    w.converter("+", "0", "p", "0", 24, 0.8);
    const second = w.converter("p", "0", "q", "0", 12, 0.5);
    const load = w.power("q", "0", 12);
    const solution = w.solve();
    expect(solution.active[load]).toBe(1);
    expect(solution.branchA[second]).toBeCloseTo(1, 12);
    expect(w.volts(solution, "+")).toBeCloseTo((12 + Math.sqrt(144 - 4 * 0.02 * 30)) / 2, 12);
  });

  it("is off when its input can't supply it, and its output is then not there", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 1);
    const converter = w.converter("+", "0", "o+", "o-", 24, 0.8);
    const load = w.wire("o+", "o-", 12);
    const solution = w.solve("0", "o-");
    expect(solution.status).toBe("ok");
    expect(solution.active[converter]).toBe(0);
    expect(solution.branchA[converter]).toBe(0);
    expect(solution.branchA[load]).toBe(0);
    expect(w.volts(solution, "+")).toBeCloseTo(12, 9);
  });

  it("without a load runs from 1 V at its input up", () => {
    const on = (volts: number): number => {
      const w = new Wiring();
      w.source("+", "0", volts);
      const converter = w.converter("+", "0", "o+", "o-", 5);
      w.power("o+", "o-", 0);
      return w.solve("0", "o-").active[converter]!;
    };
    expect([on(1), on(0.999), on(0), on(-12)]).toEqual([1, 0, 0, 0]);
  });

  it("whose ideal output is shorted without resistance is a contradiction", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.02);
    const converter = w.converter("+", "0", "o", "0", 24);
    const wire = w.wire("o", "0", 0);
    expect(new Set(w.solve().conflict)).toEqual(new Set([converter, wire]));
  });
});

describe("a converter whose output lies on another ideal source", () => {
  function joined(inputV: number): ReturnType<Wiring["solve"]> {
    const w = new Wiring();
    w.source("+", "0", inputV);
    w.converter("+", "0", "o", "0", 13);
    w.source("o", "0", 12.6);
    return w.solve();
  }

  it("contradicts it while its own input has volts", () => {
    expect(joined(12).status).toBe("contradictory");
  });

  it("is simply off while its input has none", () => {
    const solution = joined(0);
    expect(solution.status).toBe("ok");
    expect([...solution.active]).toEqual([1, 0, 1]);
  });
});

describe("a converter that feeds itself", () => {
  it("can't be supplied, so it is off", () => {
    for (const ohm of [0, 0.01]) {
      const w = new Wiring();
      w.source("+", "0", 12, 0.05);
      const converter = w.converter("+", "0", "o", "0", 12.5);
      w.wire("o", "+", ohm);
      const solution = w.solve();
      expect(solution.status).toBe("ok");
      expect(solution.active[converter]).toBe(0);
      expect(w.volts(solution, "+")).toBeCloseTo(12, 9);
    }
  });
});
