import { describe, expect, test } from "vitest";
import { buildNetlist, combinationOf, restCombination, stateOf } from "../../core/netlist/index.ts";
import { circuit } from "../support/circuit.ts";

const node = (netlist: ReturnType<typeof buildNetlist>, address: string) => netlist.terminalAt.get(address)!.node;

describe("the electrical net of a drawing", () => {
  test("gives posts of a strip one node, and every other terminal its own", () => {
    const netlist = buildNetlist(circuit("bat:battery > g:strip posts=3 > f1:fuse 5A"));
    expect(node(netlist, "g.1")).toBe(node(netlist, "g.3"));
    expect(node(netlist, "f1.1")).not.toBe(node(netlist, "f1.2"));
  });

  test("has one conductor for each wire, by its own numbers, and none for a pulled fuse", () => {
    const netlist = buildNetlist(circuit("bat:battery >(10 AWG, 2 m)> f1:fuse 5A fitted=false >(? AWG, 1 m)> ground"));
    expect(netlist.wires.map(({ known }) => known)).toEqual([true, false]);
    expect(netlist.wires[0]!.ohm).toBeCloseTo(0.006554, 6); // 2 m of 10 AWG: 3.277 mohm/m (ASTM B258 area, IEC 60028)
    expect(netlist.partAt.get("f1")!.elements[0]!.branch).toBe(-1);
  });

  test("lists every cover that holds: the one given, else the kind's for wired or not", () => {
    const netlist = buildNetlist(circuit("bat:battery > k1:relay", { covers: { "k1.87": "covered" } }));
    const cover = (address: string) => netlist.terminalAt.get(address)!.cover;
    expect([cover("k1.30"), cover("k1.87"), cover("k1.85")]).toEqual(["covered", "covered", "bare"]);
  });

  test("leaves the chassis strap off the upper battery of a series pair, also across a bar", () => {
    const straps = (text: string) =>
      buildNetlist(circuit(text)).elements.filter(({ spec }) => spec.type === "link" && spec.bond !== undefined).length;
    expect(straps("b1:battery > b2:battery")).toBe(1);
    expect(straps("b1:battery > bar:bus > b2:battery")).toBe(1);
    expect(straps("b1:battery > f1:fuse 30A > b2:battery")).toBe(2);
  });

  test("puts the engine first among the controls, then what is operated in file order", () => {
    const netlist = buildNetlist(circuit("v1:feed > s2:changeover > s1:key > ground"));
    expect(netlist.controls.map(({ id }) => id)).toEqual(["engine", "v1", "s2", "s1"]);
  });
});

describe("a combination of the controls", () => {
  const netlist = buildNetlist(circuit(["bat:battery > s1:switch > ground", "v1:feed > ground"]));

  test("sets what is named and leaves the rest at rest", () => {
    expect([...combinationOf(netlist, { s1: "on" })]).toEqual([0, 1, 0]);
    expect([...restCombination(netlist)]).toEqual([0, 0, 0]);
  });

  test("closes contacts, turns feeds on and raises every source while the engine runs", () => {
    const running = stateOf(netlist, combinationOf(netlist, { engine: "running", v1: "on" }));
    const volts = netlist.elements.flatMap(({ spec, branch }) =>
      spec.type === "source" ? [[running.sourceV![branch], running.closed[branch]]] : [],
    );
    expect(volts).toEqual([
      [13.8, 1],
      [13.8, 1],
    ]);
    const contact = netlist.elements.find(({ spec }) => spec.type === "contact")!;
    expect(running.closed[contact.branch]).toBe(0);
  });

  test.each([{ ghost: "on" }, { s1: "up" }])("refuses what is not there: %j", (set) => {
    expect(() => combinationOf(netlist, set as Record<string, string>)).toThrow(RangeError);
  });
});
