import { describe, expect, test } from "vitest";
import type { Document } from "../../core/document/index.ts";
import { possibleFaults, runDrill, type Drill, type Fault } from "../../core/drill/index.ts";
import { buildNetlist } from "../../core/netlist/index.ts";
import { circuit } from "../support/circuit.ts";

const pair = circuit(
  [
    "bat:battery > f1:fuse 15A > s1:switch > la1:lamp 55W > g1:strip",
    "s1.2 > la2:lamp 27W > g1.2",
    "g1.3 >(10 AWG, 1 m, id=return)> bat.-",
  ],
  { situations: { working: { s1: "on" } } },
);

function drill(document: Document, mode: Fault["mode"], at: string): Drill {
  const faults = possibleFaults(buildNetlist(document));
  const fault = faults.find((one) => one.mode === mode && one.at === at);
  if (!fault)
    throw new Error(`no fault ${mode} at ${at}; there are ${faults.map((one) => `${one.mode} ${one.at}`).join(", ")}`);
  return runDrill(document, fault, faults);
}

function working({ situations }: Drill) {
  return situations.find(({ id }) => id === "working")!;
}

describe("the drill", () => {
  test("a broken return puts out every lamp on its strip, and the strip reads battery volts", () => {
    const result = drill(pair, "open-wire", "return");
    expect(working(result).works).toEqual([]);
    expect(working(result).changes.map(({ part, isOn }) => [part, isOn])).toEqual([
      ["la1", false],
      ["la2", false],
    ]);
    expect(result.reading?.situation).toBe("working");
    expect(result.reading?.volts).toBeCloseTo(12.6, 1);
    expect(result.reading?.soundVolts).toBeLessThan(0.5);
  });

  test("a blown fuse leaves everything behind it dead", () => {
    const result = drill(pair, "blown-fuse", "f1");
    expect(working(result).works).toEqual([]);
    expect(working(result).stop).toBeNull();
  });

  test("a rubbed-through wire behind the fuse draws hundreds of amps and the fuse stops it", () => {
    const wire = pair.wires.find(({ from }) => from === "f1.2")!;
    const result = drill(pair, "rubbed-through", wire.id);
    const rest = result.situations[0]!;
    expect(rest.faultA).toBeGreaterThan(200);
    expect(rest.stop).toMatchObject({ at: "f1", ratingA: 15, withinS: 0.1 });
  });

  test("a rubbed-through wire before the fuse is stopped by nothing", () => {
    const rest = drill(pair, "rubbed-through", "w1").situations[0]!;
    expect(rest.faultA).toBeGreaterThan(1000);
    expect(rest.stop).toBeNull();
  });

  test("a welded switch leaves the lamps on with everything at rest", () => {
    const rest = drill(pair, "welded-contact", "s1.2").situations[0]!;
    expect(rest.works).toEqual(["la1", "la2"]);
  });

  test("a battery the wrong way round drives filament lamps backwards and still lights them", () => {
    const result = drill(circuit(["bat:battery > la1:lamp 55W > bat.-"]), "reversed-battery", "bat");
    expect(result.situations[0]?.works).toEqual(["la1"]);
    expect(result.situations[0]?.changes).toEqual([]);
  });

  test("a lost chassis strap leaves a load on the frame without a way back", () => {
    const document = circuit(["bat:battery > la1:lamp 55W > ground"]);
    const result = drill(document, "lost-chassis-bond", "bat");
    expect(result.situations[0]?.works).toEqual([]);
  });

  test("a strap nobody fitted can't be lost", () => {
    const document = circuit(["bat:battery chassisBondMilliohm=null > la1:lamp 55W > bat.-"]);
    expect(possibleFaults(buildNetlist(document)).map(({ mode }) => mode)).not.toContain("lost-chassis-bond");
  });
});

test("coil wires swapped on a relay with a diode blow the trigger's fuse", () => {
  const document = circuit(["k1:relay suppression=diode", "bat:battery > f1:fuse 3A > s1:switch > k1.86/85 > bat.-"], {
    situations: { working: { s1: "on" } },
  });
  expect(working(drill(document, "blown-fuse", "f1")).stop).toBeNull();
  expect(working(drill(document, "swapped-coil-pins", "k1")).stop).toMatchObject({ at: "f1", ratingA: 3 });
});

test("a rubbed-through wire on a vehicle's own feed is stopped by that feed's fuse, nobody knows how soon", () => {
  const tapped = circuit(["bat:battery", "v1:feed > la1:lamp 27W > g1:strip", "g1.2 > bat.-"], {
    situations: { working: { v1: "on" } },
  });
  const fused = {
    ...tapped,
    parts: tapped.parts.map((part) => (part.id === "v1" ? { ...part, props: { ...part.props, fuseA: 10 } } : part)),
  };
  const wire = fused.wires.find(({ from }) => from === "v1.out")!;
  expect(working(drill(fused, "rubbed-through", wire.id)).stop).toMatchObject({
    at: "v1",
    ratingA: 10,
    withinS: null,
  });
});
