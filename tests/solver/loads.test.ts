import { describe, expect, it } from "vitest";
import { Wiring } from "./wiring.ts";

/** A load of `watts` behind `ohm` on `volts`, by the quadratic formula, higher root. */
function powerBehind(volts: number, ohm: number, watts: number): number {
  return (volts + Math.sqrt(volts ** 2 - 4 * ohm * watts)) / 2;
}

describe("constant power", () => {
  it("takes the higher-voltage solution, far from the limit and close to it", () => {
    for (const [volts, ohm, watts] of [
      [12, 0.1, 60],
      [12, 0.5, 50],
      [12, 1, 30],
      [12, 1, 35.9999],
      [24, 0.2, 200],
    ] as const) {
      const w = new Wiring();
      w.source("+", "0", volts);
      w.wire("+", "x", ohm);
      const load = w.power("x", "0", watts);
      const solution = w.solve();
      expect(w.volts(solution, "x")).toBeCloseTo(powerBehind(volts, ohm, watts), 9);
      expect(solution.active[load]).toBe(1);
      expect(solution.residualA).toBeLessThan(1e-11);
      expect(solution.residualW).toBeLessThan(1e-9);
    }
  });

  it("is off when the wiring can't bring it that much, and on when it just can", () => {
    const on = (watts: number): number => {
      const w = new Wiring();
      w.source("+", "0", 12);
      w.wire("+", "x", 1);
      const load = w.power("x", "0", watts);
      const solution = w.solve();
      expect(solution.status).toBe("ok");
      return solution.active[load]!;
    };
    expect(on(36.01)).toBe(0);
    expect(on(36)).toBe(1);
    expect(on(35.99)).toBe(1);
  });

  it("gives way first where it asks most of the wiring; the rest then stay on", () => {
    const w = new Wiring();
    w.source("+", "0", 12);
    w.wire("+", "x", 1);
    const small = w.power("x", "0", 10);
    const large = w.power("x", "0", 20);
    const middle = w.power("x", "0", 15);
    const { active } = w.solve();
    expect([active[small], active[large], active[middle]]).toEqual([1, 0, 1]);
  });

  it("opens outside its volts and stays on exactly at the limit", () => {
    const on = (volts: number, limits: { minV?: number; maxV?: number }): number => {
      const w = new Wiring();
      w.source("+", "0", volts);
      const load = w.power("+", "0", 5, limits);
      return w.solve().active[load]!;
    };
    expect(on(9, { minV: 9 })).toBe(1);
    expect(on(8.999999, { minV: 9 })).toBe(0);
    expect(on(16, { maxV: 16 })).toBe(1);
    expect(on(16.000001, { maxV: 16 })).toBe(0);
    expect(on(3, {})).toBe(1);
  });

  it("drops out by its volts under load, not by those it has when off", () => {
    const w = new Wiring();
    w.source("+", "0", 12);
    w.wire("+", "x", 1);
    const load = w.power("x", "0", 30, { minV: 10 });
    const solution = w.solve();
    expect(solution.active[load]).toBe(0);
    expect(w.volts(solution, "x")).toBeCloseTo(12, 9);
  });

  it("one dropped stays out although there would be room for it in the end", () => {
    // Both sag to 8 V together; the second is further under its limit, goes, and the first is then well within its own.
    const w = new Wiring();
    w.source("+", "0", 12);
    w.wire("+", "x", 1);
    const first = w.power("x", "0", 16, { minV: 9 });
    const second = w.power("x", "0", 16, { minV: 10 });
    const solution = w.solve();
    expect([solution.active[first], solution.active[second]]).toEqual([1, 0]);
    expect(w.volts(solution, "x")).toBeCloseTo(powerBehind(12, 1, 16), 11);
  });

  it("draws nothing when reversed, unless it takes either way", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.01);
    const oneWay = w.power("0", "+", 24);
    const eitherWay = w.power("0", "+", 24, { eitherWay: true });
    const { branchA, active } = w.solve();
    expect([active[oneWay], active[eitherWay]]).toEqual([0, 1]);
    expect(branchA[oneWay]).toBe(0);
    expect(branchA[eitherWay]).toBeCloseTo(-24 / powerBehind(12, 0.01, 24), 12);
  });

  it("is off behind an open contact, however many hang there", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.01);
    w.contact("+", "x", 0.01, false);
    const loads = [1, 2, 3, 4].map((i) => w.power("x", `g${i}`, 20 * i));
    for (const i of [1, 2, 3, 4]) w.wire(`g${i}`, "0", 0.01);
    const lit = w.power("+", "g1", 40);
    const solution = w.solve();
    for (const load of loads) expect(solution.active[load]).toBe(0);
    expect(solution.active[lit]).toBe(1);
    expect(solution.known[w.node("x")]).toBe(1);
  });
});

describe("constant current", () => {
  it("flows from 1 V up", () => {
    const amps = (volts: number): number => {
      const w = new Wiring();
      w.source("+", "0", volts);
      const load = w.current("+", "0", 2);
      return w.solve().branchA[load]!;
    };
    expect(amps(12)).toBe(2);
    expect(amps(1)).toBe(2);
    expect(amps(0.999999)).toBe(0);
    expect(amps(-12)).toBe(0);
  });

  it("that would pull its own volts under 1 V drops out", () => {
    const w = new Wiring();
    w.source("+", "0", 12);
    w.wire("+", "x", 6);
    const load = w.current("x", "0", 2);
    const other = w.current("x", "0", 1);
    const solution = w.solve();
    expect(solution.branchA[load]).toBe(0);
    expect(solution.branchA[other]).toBe(1);
    expect(w.volts(solution, "x")).toBeCloseTo(6, 10);
  });

  it("runs backwards when reversed if it takes either way", () => {
    const w = new Wiring();
    w.source("+", "0", 12);
    const load = w.current("0", "+", 2, true);
    expect(w.solve().branchA[load]).toBe(-2);
  });
});

describe("a filament", () => {
  it("draws its rated current at its rated volts and follows the 0.55 power elsewhere", () => {
    for (const [volts, amps] of [
      [12.8, 55 / 12.8],
      [6.4, (55 / 12.8) * 0.5 ** 0.55],
      [-12.8, -55 / 12.8],
      [0.001, (55 / 12.8) * (0.001 / 12.8) ** 0.55],
    ] as const) {
      const w = new Wiring();
      w.source("+", "0", volts);
      const lamp = w.filament("+", "0", 55);
      expect(w.solve().branchA[lamp]).toBeCloseTo(amps, 13);
    }
  });

  it("finds its volts behind a resistance, bright or barely warm", () => {
    for (const ohm of [0.1, 1, 10, 1000, 1e4]) {
      const w = new Wiring();
      w.source("+", "0", 12);
      w.wire("+", "x", ohm);
      const lamp = w.filament("x", "0", 55);
      const solution = w.solve();
      const volts = w.volts(solution, "x");
      expect(solution.status).toBe("ok");
      const byLaw = (55 / 12.8) * (volts / 12.8) ** 0.55;
      expect(Math.abs(byLaw / ((12 - volts) / ohm) - 1)).toBeLessThan(1e-9);
      expect(solution.branchA[lamp]).toBeCloseTo(byLaw, 9);
      expect(solution.residualA).toBeLessThan(1e-11);
    }
  });

  it("carries nothing at all when dead", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.01);
    w.contact("+", "x", 0.01, false);
    const dead = w.filament("x", "g", 55);
    w.wire("g", "0", 0.01);
    w.filament("+", "g", 55);
    const solution = w.solve();
    expect(Math.abs(solution.branchA[dead]!)).toBeLessThan(1e-12);
    expect(solution.active[dead]).toBe(1);
    expect(solution.residualA).toBeLessThan(1e-11);
  });

  it("in series with another shares the volts", () => {
    const w = new Wiring();
    w.source("+", "0", 12.8);
    w.filament("+", "x", 21);
    w.filament("x", "0", 21);
    expect(w.volts(w.solve(), "x")).toBeCloseTo(6.4, 12);
  });
});
