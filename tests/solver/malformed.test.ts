import { describe, expect, it } from "vitest";
import type { Branch } from "../../core/circuit/index.ts";
import { createSolver, solveDc } from "../../core/solver/index.ts";
import { Wiring } from "./wiring.ts";

function solving(branch: Branch): () => unknown {
  return () => createSolver({ nodeCount: 2, branches: [branch], relays: [], references: [0] });
}

describe("a circuit that can't be is refused with what was got and wanted", () => {
  it.each<[Branch, RegExp]>([
    [{ type: "resistor", a: 0, b: 1, ohm: -2 }, /branch 0 \(resistor\): ohm is -2; wanted 0 ohm or more/],
    [{ type: "resistor", a: 0, b: 2, ohm: 1 }, /branch 0 \(resistor\): b is 2; wanted a node, 0 to 1/],
    [{ type: "contact", a: 0.5, b: 1, ohm: 1 }, /a is 0\.5/],
    [{ type: "source", a: 0, b: 1, volts: Number.NaN, ohm: 1 }, /volts is NaN/],
    [{ type: "diode", a: 0, b: 1, forwardV: -1, ohm: 1 }, /forwardV is -1/],
    [{ type: "filament", a: 0, b: 1, watts: 5, ratedV: 0 }, /ratedV is 0; wanted more than 0 V/],
    [{ type: "power", a: 0, b: 1, watts: Infinity, minV: null, maxV: null, eitherWay: false }, /watts is Infinity/],
    [{ type: "power", a: 0, b: 1, watts: 1, minV: -1, maxV: null, eitherWay: false }, /minV is -1/],
    [{ type: "power", a: 0, b: 1, watts: 1, minV: null, maxV: 0, eitherWay: false }, /maxV is 0/],
    [{ type: "current", a: 0, b: 1, amps: -1, eitherWay: false }, /amps is -1/],
    [{ type: "converter", a: 0, b: 1, outA: 0, outB: 7, volts: 12, efficiency: 1 }, /outB is 7/],
    [{ type: "converter", a: 0, b: 1, outA: 0, outB: 1, volts: 12, efficiency: 0 }, /efficiency is 0/],
  ])("%o", (branch, message) => {
    expect(solving(branch)).toThrow(RangeError);
    expect(solving(branch)).toThrow(message);
  });

  it("names references, coils, contacts and states that lead nowhere", () => {
    const contact: Branch = { type: "contact", a: 0, b: 1, ohm: 0 };
    const base = { nodeCount: 2, branches: [contact], relays: [], references: [0] };
    const relay = { coil: 0, pullInV: 7, dropOutV: 1, makes: [], breaks: [] };
    expect(() => createSolver({ ...base, references: [2] })).toThrow(/references\[0\] is 2/);
    expect(() => createSolver({ ...base, relays: [relay] })).toThrow(
      /relays\[0\]\.coil is 0; wanted the index of a resistor/,
    );
    expect(() => solveDc(base, { closed: new Uint8Array(3), sourceV: null })).toThrow(
      /closed\.length is 3; wanted one entry a branch, 1/,
    );
    const sourced = { ...base, branches: [{ type: "source", a: 0, b: 1, volts: 12, ohm: 1 } as const] };
    expect(() => solveDc(sourced, { closed: new Uint8Array(1), sourceV: Float64Array.of(Number.NaN) })).toThrow(
      /sourceV\[0\] is NaN/,
    );
  });
});

describe("an empty circuit", () => {
  it("has a solution with nothing in it", () => {
    expect(new Wiring().solve("0").status).toBe("ok");
    const nothing = { nodeCount: 0, branches: [], relays: [], references: [] };
    expect(solveDc(nothing, { closed: new Uint8Array(0), sourceV: null }).nodeV).toHaveLength(0);
  });
});
