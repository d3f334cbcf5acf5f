import { describe, expect, it } from "vitest";
import { createSolver } from "../../core/solver/index.ts";
import { Wiring } from "./wiring.ts";

describe("zero-ohm branches", () => {
  it("make one node of two places and still report their current", () => {
    const w = new Wiring();
    const source = w.source("+", "0", 12, 1);
    const first = w.wire("+", "x", 0);
    const second = w.wire("x", "y", 0);
    const load = w.wire("y", "0", 5);
    const solution = w.solve();
    expect(w.volts(solution, "y")).toBe(10);
    for (const branch of [source, first, second, load]) expect(solution.branchA[branch]).toBeCloseTo(2, 14);
    expect(solution.residualA).toBeLessThan(1e-14);
  });

  it("share like equal tiny resistances where they form a loop", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 1);
    const direct = w.wire("+", "y", 0);
    const left = w.wire("+", "x", 0);
    const right = w.wire("x", "y", 0);
    w.wire("y", "0", 5);
    const { branchA } = w.solve();
    expect(branchA[direct]).toBeCloseTo(4 / 3, 14);
    expect(branchA[left]).toBeCloseTo(2 / 3, 14);
    expect(branchA[right]).toBeCloseTo(2 / 3, 14);
  });

  it("let an ideal source hold its volts exactly, in series too", () => {
    const w = new Wiring();
    const low = w.source("m", "0", 12.6);
    const high = w.source("+", "m", 12.6);
    w.wire("+", "0", 2);
    w.wire("m", "0", 6);
    const solution = w.solve();
    expect(w.volts(solution, "+")).toBe(25.2);
    expect(solution.branchA[high]).toBeCloseTo(12.6, 13);
    expect(solution.branchA[low]).toBeCloseTo(14.7, 13);
  });

  it("share the current of two equal ideal sources side by side", () => {
    const w = new Wiring();
    const one = w.source("+", "0", 12);
    const two = w.source("+", "0", 12);
    w.wire("+", "0", 3);
    const { status, branchA } = w.solve();
    expect(status).toBe("ok");
    expect(branchA[one]).toBeCloseTo(2, 14);
    expect(branchA[two]).toBeCloseTo(2, 14);
  });

  it("that lead from a node to itself carry nothing", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 1);
    const loop = w.wire("+", "+", 0);
    const solution = w.solve();
    expect(solution.status).toBe("ok");
    expect(solution.branchA[loop]).toBe(0);
  });
});

describe("contradictory ideal sources", () => {
  it("of different volts side by side are named", () => {
    const w = new Wiring();
    const one = w.source("+", "0", 12);
    w.wire("+", "x", 1);
    const two = w.source("+", "0", 13);
    const solution = w.solve();
    expect(solution.status).toBe("contradictory");
    expect(new Set(solution.conflict)).toEqual(new Set([one, two]));
    expect([...solution.known]).toEqual([0, 0, 0]);
  });

  it("name the wires that short one too, and nothing beside the loop", () => {
    const w = new Wiring();
    const source = w.source("+", "0", 12);
    const there = w.wire("+", "x", 0);
    const back = w.wire("x", "0", 0);
    w.wire("x", "spur", 0);
    const solution = w.solve();
    expect(new Set(solution.conflict)).toEqual(new Set([source, there, back]));
  });

  it("with both ends on one node", () => {
    const w = new Wiring();
    const source = w.source("+", "+", 12);
    w.node("0");
    expect(w.solve().conflict).toEqual([source]);
  });

  it("are not there when one of them is absent, or has any resistance", () => {
    const w = new Wiring();
    w.source("+", "0", 12);
    const other = w.source("+", "0", 13, 0.01);
    expect(w.solve().branchA[other]).toBeCloseTo(100, 10);
  });
});

describe("a shorted source with resistance", () => {
  it("is just a big current", () => {
    const w = new Wiring();
    const source = w.source("+", "0", 12.6, 0.006);
    const wire = w.wire("+", "0", 0);
    const solution = w.solve();
    expect(solution.branchA[source]).toBeCloseTo(2100, 9);
    expect(solution.branchA[wire]).toBeCloseTo(2100, 9);
  });

  it("on itself as well", () => {
    const w = new Wiring();
    const source = w.source("0", "0", 12.6, 0.006);
    expect(w.solve().branchA[source]).toBeCloseTo(2100, 9);
  });
});

describe("networks", () => {
  it("measure from the first of the zeros each contains", () => {
    const w = new Wiring();
    w.source("a+", "a-", 12, 0.1);
    w.source("b+", "b-", 24, 0.1);
    w.wire("a-", "frame", 0.01);
    const solution = w.solve("b-", "frame", "a-");
    expect(w.volts(solution, "frame")).toBe(0);
    expect(w.volts(solution, "b-")).toBe(0);
    expect(w.volts(solution, "b+")).toBe(24);
    expect(solution.network[w.node("a+")]).not.toBe(solution.network[w.node("b+")]);
    expect(new Set(solution.known)).toEqual(new Set([1]));
  });

  it("end at open contacts and absent sources, and without a zero nothing is known", () => {
    const w = new Wiring();
    w.source("+", "0", 12);
    const contact = w.contact("+", "x");
    const gone = w.source("y", "x", 5);
    w.wire("x", "z", 1);
    const solution = w.solve();
    expect(w.volts(solution, "y")).toBe(17);
    const closed = w.state([contact, gone]).closed;
    const parted = solveIn(w, closed);
    expect(parted.known[w.node("x")]).toBe(0);
    expect(parted.known[w.node("y")]).toBe(0);
    expect(parted.network[w.node("z")]).toBe(-1);
    expect(parted.nodeV[w.node("z")]).toBe(0);
    expect(parted.known[w.node("+")]).toBe(1);
  });

  it("reach through a load that draws nothing and a blocking diode, whose current is exactly none", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.01);
    const off = w.power("+", "x", 0);
    const blocking = w.diode("y", "+");
    const solution = w.solve();
    expect(w.volts(solution, "x")).toBeCloseTo(12, 10);
    expect(w.volts(solution, "y")).toBeCloseTo(12, 10);
    expect(solution.branchA[off]).toBe(0);
    expect(solution.branchA[blocking]).toBe(0);
    expect(solution.active[off]).toBe(0);
  });

  it("held together by ties alone read exactly what the ties make of it", () => {
    // 12.6 V through three equal ties: a third across each, and an island with copper and a current in it changes nothing.
    const w = new Wiring();
    w.source("+", "0", 12.6);
    w.power("+", "island", 0);
    w.source("inner+", "island", 6, 0.001);
    w.wire("inner+", "inner", 0.002);
    const inside = w.wire("inner", "island", 0.003);
    w.power("island", "y", 0);
    w.power("y", "0", 0);
    const solution = w.solve();
    expect(w.volts(solution, "y")).toBeCloseTo(4.2, 14);
    expect(w.volts(solution, "island")).toBeCloseTo(8.4, 14);
    expect(solution.branchA[inside]).toBeCloseTo(1000, 8);
  });

  it("keep an island of ties exact when a load inside draws from a source inside", () => {
    const w = new Wiring();
    w.source("+", "0", 12.6);
    w.power("+", "island", 0);
    w.source("inner+", "island", 12, 0.01);
    w.wire("inner+", "p", 0.02);
    const load = w.power("p", "island", 120);
    w.power("island", "y", 0);
    w.power("y", "0", 0);
    const solution = w.solve();
    expect(solution.active[load]).toBe(1);
    expect(w.volts(solution, "y")).toBeCloseTo(4.2, 12);
    expect(w.volts(solution, "island")).toBeCloseTo(8.4, 12);
  });
});

function solveIn(w: Wiring, closed: Uint8Array): ReturnType<Wiring["solve"]> {
  return createSolver(w.circuit("0")).solve({ closed, sourceV: null });
}

describe("state", () => {
  it("sets contacts and the volts of each source", () => {
    const w = new Wiring();
    const source = w.source("+", "0", 12, 1);
    w.contact("+", "x", 1, true);
    w.wire("x", "0", 4);
    const sourceV = new Float64Array(w.branches.length);
    sourceV[source] = 6;
    const solution = createSolver(w.circuit("0")).solve({ closed: w.state().closed, sourceV });
    expect(solution.branchA[source]).toBeCloseTo(1, 14);
    expect([...solution.active]).toEqual([1, 1, 1]);
  });
});

describe("wires of microohms", () => {
  it("balance far below what the last bit of 12 V makes in them", () => {
    const w = new Wiring();
    w.source("+", "0", 12.6, 0.006);
    for (let i = 0; i < 30; i++) w.wire(i === 0 ? "+" : `n${i}`, `n${i + 1}`, 3e-6 + i * 1e-7);
    w.wire("n30", "0", 0.3);
    w.wire("n20", "0", 0.7);
    const { residualA, branchA } = w.solve();
    expect(residualA).toBeLessThan(1e-12);
    expect(branchA[1]).toBeCloseTo(branchA[0]!, 11);
  });
});
