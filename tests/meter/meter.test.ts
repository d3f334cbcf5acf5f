import { describe, expect, test } from "vitest";
import type { Document } from "../../core/document/index.ts";
import { readClampAmps, readOhms, readVolts, type Leads } from "../../core/meter/index.ts";
import { buildNetlist, combinationOf, type Netlist } from "../../core/netlist/index.ts";
import { circuit } from "../support/circuit.ts";

const lamp = circuit(["bat:battery > f1:fuse 10A > s1:switch > la1:lamp 55W > bat.-"]);

function net(document: Document): Netlist {
  return buildNetlist(document);
}

function leads(netlist: Netlist, red: string, black: string): Leads {
  return { red: netlist.terminalAt.get(red)!.node, black: netlist.terminalAt.get(black)!.node };
}

describe("volts", () => {
  test("an open switch has the whole battery across it, less nothing", () => {
    const netlist = net(lamp);
    const reading = readVolts(netlist, combinationOf(netlist, {}), leads(netlist, "s1.1", "s1.2"));
    expect(reading).toEqual({ says: "volts", value: expect.closeTo(12.6, 6) });
  });

  test("swapped leads show the same with a minus", () => {
    const netlist = net(lamp);
    const reading = readVolts(netlist, combinationOf(netlist, {}), leads(netlist, "bat.-", "bat.+"));
    expect(reading).toEqual({ says: "volts", value: expect.closeTo(-12.6, 6) });
  });

  test("between things that share nothing the meter shows open", () => {
    const netlist = net(circuit(["bat:battery chassisBondMilliohm=null > f1:fuse 10A", "other:splice"]));
    expect(readVolts(netlist, combinationOf(netlist, {}), leads(netlist, "f1.2", "other.s"))).toEqual({ says: "open" });
  });
});

test("the clamp shows what the wire carries, by its direction", () => {
  const netlist = net(circuit(["bat:battery internalMilliohm=0 > s1:switch milliohm=0 > r1:resistor 6.3ohm > bat.-"]));
  const on = combinationOf(netlist, { s1: "on" });
  const reading = readClampAmps(netlist, on, 0);
  // 12.6 V over 6.3 ohm is 2 A, less what three short wires add (0.3 m of 10 AWG, about a milliohm).
  expect(reading).toEqual({ says: "amps", value: expect.closeTo(2, 2) });
});

describe("ohms with the power off", () => {
  const coil = circuit(["k1:relay 90ohm", "bat:battery > s1:switch > k1.86/85 > bat.-"]);

  test("a relay coil shows its own resistance", () => {
    const netlist = net(coil);
    const reading = readOhms(netlist, combinationOf(netlist, {}), leads(netlist, "k1.86", "k1.85"));
    expect(reading).toEqual({ says: "ohms", value: expect.closeTo(90, 3) });
  });

  test("an open switch shows open, a closed one its contact", () => {
    const netlist = net(circuit(["s1:switch milliohm=10 > r1:resistor 50ohm"]));
    const across = leads(netlist, "s1.1", "s1.2");
    expect(readOhms(netlist, combinationOf(netlist, {}), across)).toEqual({ says: "open" });
    expect(readOhms(netlist, combinationOf(netlist, { s1: "on" }), across)).toEqual({
      says: "ohms",
      value: expect.closeTo(0.01, 6),
    });
  });

  test("two resistors side by side show less than either: 6 and 3 ohm make 2", () => {
    const netlist = net(
      circuit(["r1:resistor 6ohm", "r2:resistor 3ohm", "r1.1 >(10 AWG, 0 m)> r2.1", "r1.2 >(10 AWG, 0 m)> r2.2"]),
    );
    const reading = readOhms(netlist, combinationOf(netlist, {}), leads(netlist, "r1.1", "r1.2"));
    expect(reading).toEqual({ says: "ohms", value: expect.closeTo(2, 6) });
  });

  test("an LED lamp shows open: its driver needs volts to wake", () => {
    const netlist = net(circuit(["la1:led 27W"]));
    expect(readOhms(netlist, combinationOf(netlist, {}), leads(netlist, "la1.+", "la1.-"))).toEqual({ says: "open" });
  });
});
