import { describe, expect, it } from "vitest";
import { createSolver } from "../../core/solver/index.ts";
import { Wiring } from "./wiring.ts";

describe("a relay", () => {
  it("pulls in exactly at its pull-in volts and not below", () => {
    for (const [volts, pulledIn] of [
      [7.5, 1],
      [7.499999, 0],
      [-7.5, 1],
    ] as const) {
      const w = new Wiring();
      w.source("+", "0", volts);
      w.relay(w.wire("+", "0", 90), 7.5, 1.5, []);
      expect(w.solve().pulledIn[0]).toBe(pulledIn);
    }
  });

  it("pulls in at its limit when that is reached through resistances as well", () => {
    const w = new Wiring();
    w.source("+", "0", 10);
    w.wire("+", "x", 30);
    w.relay(w.wire("x", "0", 90), 7.5, 1.5, []);
    expect(w.solve().pulledIn[0]).toBe(1);
  });

  it("moves its contacts: makes close, breaks open", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.01);
    const key = w.contact("+", "coil", 0.01);
    const make = w.contact("+", "87", 0.005);
    const rest = w.contact("+", "87a", 0.005);
    w.relay(w.wire("coil", "0", 90), 7.5, 1.5, [make], [rest]);
    w.wire("87", "0", 10);
    w.wire("87a", "0", 10);
    const solver = createSolver(w.circuit("0"));
    const on = solver.solve(w.state());
    expect([on.active[make], on.active[rest]]).toEqual([1, 0]);
    expect(on.branchA[rest]).toBe(0);
    const off = solver.solve(w.state([key]));
    expect([off.active[make], off.active[rest]]).toEqual([0, 1]);
    expect(off.pulledIn[0]).toBe(0);
  });

  it("holds itself in from its drop-out volts up, and lets go below", () => {
    // The coil is fed through its own make: in through the first path, then held by less.
    const held = (dropOutV: number): string => {
      const w = new Wiring();
      w.source("+", "0", 12);
      const starts = w.contact("+", "coil", 0, true);
      const own = w.contact("weak", "coil", 0);
      w.wire("+", "weak", 90);
      const coil = w.wire("coil", "0", 90);
      w.relay(coil, 7.5, dropOutV, [own], [starts]);
      const { status, pulledIn } = w.solve();
      return `${status} ${pulledIn[0]}`;
    };
    expect(held(1.5)).toBe("ok 1");
    expect(held(6)).toBe("ok 1");
    expect(held(6.1)).toBe("chatter 0");
  });

  it("that breaks its own coil chatters, and then nothing is known", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.006);
    const own = w.contact("+", "x");
    w.relay(w.wire("x", "0", 90), 7.5, 1.5, [], [own]);
    const solution = w.solve();
    expect(solution.status).toBe("chatter");
    expect([...solution.known, ...solution.nodeV, ...solution.branchA].every((value) => value === 0)).toBe(true);
  });

  it("moves together with all others at once, one after the other in a chain", () => {
    const w = new Wiring();
    w.source("+", "0", 12, 0.006);
    const links: number[] = [];
    for (let i = 0; i < 5; i++) {
      const feed = i === 0 ? "+" : `c${i}`;
      const coil = w.wire(feed, "0", 90);
      const make = w.contact("+", `c${i + 1}`, 0.005);
      links.push(make);
      w.relay(coil, 7.5, 1.5, [make]);
    }
    expect([...w.solve().pulledIn]).toEqual([1, 1, 1, 1, 1]);
  });
});
