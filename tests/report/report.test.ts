import { describe, expect, test } from "vitest";
import { analyse } from "../../core/analyse.ts";
import { circuit } from "../support/circuit.ts";

const lamp = circuit("bat:battery > f1:fuse 10A > s1:switch > la1:lamp 55W > ground", {
  situations: { working: { s1: "on" } },
});

describe("the report", () => {
  test("names its format, and the table its wire limits come from", () => {
    expect(analyse(lamp).report).toMatchObject({
      format: "groundstrap-report",
      version: 1,
      capacityTable: { id: "vehicle" },
    });
    const { report } = analyse({ ...lamp, system: { capacityTable: "insulation" } });
    expect(report.capacityTable.source).toContain("33 CFR 183.425");
  });

  test("tells every situation, rest first, also one the file calls rest", () => {
    const { report } = analyse({ ...lamp, situations: [...lamp.situations!, { id: "rest", name: "All off" }] });
    expect(Object.entries(report.situations).map(([id, { name }]) => [id, name])).toEqual([
      ["rest", "All off"],
      ["working", "working"],
    ]);
  });

  test("gives a return no guard key at all, and an unguarded lead a null one", () => {
    const { wires } = analyse(lamp).report;
    expect(wires["w1"]).toHaveProperty("guard", null);
    expect(Object.keys(wires["w4"]!)).not.toContain("guard");
  });

  test("keeps the keys of what never settles, with null for every number", () => {
    const { report } = analyse(
      circuit("bat:battery > f1:fuse 5A > k1:relay.30/87a contact=changeover > k1.86/85 > ground"),
    );
    expect(report.situations["rest"]).toMatchObject({
      settled: false,
      residualA: null,
      terminals: { "bat.+": { volts: null } },
      wires: { w1: { amps: null, dropV: null, dropPercent: null } },
      parts: { k1: { pulledIn: null, coilV: null }, f1: { amps: null, loadPercent: null } },
    });
    expect(report.summary).toMatchObject({ restDrainA: null, daysToHalf: null });
    expect(report.summary.unproved[0]).toContain("never settle");
  });

  test("counts days to half of the battery that is flat first, and none where a capacity is not stated", () => {
    const drained = (one: string, other: string) =>
      analyse(
        circuit([
          `b1:battery ${one} > f1:fuse 5A > r1:load model=constant-current amps=0.1 > ground`,
          `b2:battery ${other} > f2:fuse 5A > r2:load model=constant-current amps=0.2 > ground`,
        ]),
      ).report.summary;
    expect(drained("60Ah", "60Ah").restDrainA).toBeCloseTo(0.3, 9);
    expect(drained("60Ah", "60Ah").daysToHalf).toBeCloseTo(30 / 0.2 / 24, 9);
    expect(drained("60Ah", "").daysToHalf).toBeNull();
  });
});
