import { describe, expect, test } from "vitest";
import { circuit } from "./circuit.ts";

describe("the notation of circuits in tests", () => {
  test("draws a chain of parts with a wire between each two", () => {
    const { parts, wires } = circuit("bat:battery > f1:fuse 10A >(16 AWG, 3 m, sheathed)> la1:lamp 55W > ground");
    expect(parts.map(({ id, kind }) => [id, kind])).toEqual([
      ["bat", "battery"],
      ["f1", "fuse"],
      ["la1", "lamp"],
      ["ground4", "chassis"],
    ]);
    expect(parts[1]?.props).toMatchObject({ ratingA: 10 });
    expect(wires.map(({ id, from, to }) => [id, from, to])).toEqual([
      ["w1", "bat.+", "f1.1"],
      ["w2", "f1.2", "la1.+"],
      ["w3", "la1.-", "ground4.g"],
    ]);
    expect(wires[1]).toMatchObject({ size: "16 AWG", metres: 3, sheathed: true });
  });

  test("goes on from parts drawn before, at the terminals said", () => {
    const { wires } = circuit(["k1:relay.30/87 contact=changeover > ground", "bat:battery > k1.86", "k1.85 > bat.-"]);
    expect(wires.map(({ from, to }) => [from, to])).toEqual([
      ["k1.87", "ground2.g"],
      ["bat.+", "k1.86"],
      ["k1.85", "bat.-"],
    ]);
  });

  test("reads lists, unknown sizes and situations", () => {
    const document = circuit('x1:block ways=[{"ratingA":10},{}] >(? AWG, ? m, id=w9)> ground', {
      situations: { working: { s1: "on" } },
    });
    expect(document.parts[0]?.props?.["ways"]).toEqual([{ ratingA: 10 }, {}]);
    expect(document.wires[0]).toEqual({ id: "w9", from: "x1.1", to: "ground2.g", label: "1" });
    expect(document.situations).toEqual([{ id: "working", name: "working", set: { s1: "on" } }]);
  });

  test.each([["lantern 5W"], ["fuse 10V"], ["fuse >(thick)> lamp"]])("refuses %s", (chain) => {
    expect(() => circuit(chain)).toThrow(RangeError);
  });
});
