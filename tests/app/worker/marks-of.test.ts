import { describe, expect, test } from "vitest";
import { PART_FLAG, STANDING, STANDING_BITS, TERMINAL_FLAG, WIRE_FLAG } from "../../../app/board/marks.ts";
import { marksOf } from "../../../app/worker/marks-of.ts";
import { analyse } from "../../../core/analyse.ts";
import type { Document } from "../../../core/document/index.ts";
import { combinationOf } from "../../../core/netlist/index.ts";
import { readSituation } from "../../../core/readings/index.ts";
import { lampCircuit } from "../drawing.ts";

function marked(document: Document, positions: Record<string, string>) {
  const { study, report } = analyse(document);
  const reading = readSituation(study.netlist, combinationOf(study.netlist, positions), "now", "Now");
  const marks = marksOf(7, study.netlist, report, { ...reading, positions });
  const terminal = (address: string) => marks.terminals[study.netlist.terminalAt.get(address)!.index]!;
  return { marks, terminal };
}

describe("marks for the Board", () => {
  test("tell always hot, switched and ground apart", () => {
    const { terminal } = marked(lampCircuit, {});
    expect(terminal("b1.+") & STANDING_BITS).toBe(STANDING.always);
    expect(terminal("s1.2") & STANDING_BITS).toBe(STANDING.switched);
    expect(terminal("la1.-") & STANDING_BITS).toBe(STANDING.ground);
  });

  test("tell what is live and lit in the present situation", () => {
    const off = marked(lampCircuit, {});
    const on = marked(lampCircuit, { s1: "on" });
    expect(off.terminal("s1.2") & TERMINAL_FLAG.hotNow).toBe(0);
    expect(on.terminal("s1.2") & TERMINAL_FLAG.hotNow).toBe(TERMINAL_FLAG.hotNow);
    expect(on.marks.parts[3]! & PART_FLAG.on).toBe(PART_FLAG.on);
    expect(off.marks.parts[3]! & PART_FLAG.on).toBe(0);
    expect(on.marks.wires[2]).toBeGreaterThan(1);
  });

  test("mark the wire no device guards and the one that carries too much", () => {
    const thin = {
      ...lampCircuit,
      wires: lampCircuit.wires.map((wire) => (wire.id === "w3" ? { ...wire, size: "24 AWG" } : wire)),
    };
    const { marks } = marked(
      { ...thin, parts: thin.parts.map((part) => (part.id === "la1" ? { ...part, props: { watts: 200 } } : part)) },
      { s1: "on" },
    );
    expect(marks.wireFlags[0]! & WIRE_FLAG.unguarded).toBe(WIRE_FLAG.unguarded);
    expect(marks.wireFlags[1]! & WIRE_FLAG.unguarded).toBe(0);
    expect(marks.wireFlags[1]! & WIRE_FLAG.overload).toBe(0);
    expect(marks.revision).toBe(7);
  });
});
