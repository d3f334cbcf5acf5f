import { describe, expect, test } from "vitest";
import { changeWords } from "../../../app/store/change-words.ts";
import type { Present } from "../../../app/worker/protocol.ts";
import type { PartReading } from "../../../core/readings/index.ts";
import { lampCircuit } from "../drawing.ts";

const present = (parts: Record<string, PartReading>, settled = true): Present => ({
  positions: {},
  settled,
  residualA: 0,
  terminals: {},
  wires: {},
  parts,
});

describe("what a flick brought about, in words", () => {
  test("names what went on, off, in or out, and nothing else", () => {
    const before = present({ la1: { on: false }, f1: { amps: 0 }, s1: { pulledIn: true } });
    const after = present({ la1: { on: true }, f1: { amps: 2 }, s1: { pulledIn: false } });
    expect(changeWords(lampCircuit, before, after)).toBe("S1 let go, LA1 on");
    expect(changeWords(lampCircuit, after, after)).toBe("");
  });

  test("says when nothing settles", () => {
    expect(changeWords(lampCircuit, null, present({}, false))).toBe("nothing settles");
  });

  test("stops after a few", () => {
    const many = { ...lampCircuit, parts: Array.from({ length: 9 }, (_, at) => ({ id: `la${at}`, kind: "lamp" })) };
    const on = Object.fromEntries(many.parts.map((part) => [part.id, { on: true }]));
    expect(changeWords(many, null, present(on))).toMatch(/LA4 on, and 4 more$/);
  });
});
