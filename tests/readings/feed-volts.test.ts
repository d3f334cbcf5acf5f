import { expect, test } from "vitest";
import { analyse } from "../../core/analyse.ts";
import { circuit } from "../support/circuit.ts";

test("a coil's suppression diode is no wire: a load's loss is counted from its battery, not from battery and trigger together", () => {
  const document = circuit(
    ["k1:relay suppression=diode", "bat:battery > k1.30/87 > la1:lamp 55W > bat.-", "ff1:feed 5A > k1.86/85 > ground"],
    { situations: { lit: { ff1: "on" } } },
  );
  const lamp = analyse(document).report.situations["lit"]!.parts["la1"]!;
  // 4.3 A through 6 milliohm of battery, 5 of contact and a milliohm of wire.
  expect(lamp.lossV).toBeCloseTo(0.05, 2);
});

test("the upper battery of a series string counts with the one below it", () => {
  const document = circuit(["b2:battery", "b1:battery > b2.-", "b2.+ > r1:load 48W ratedV=24 > b1.-"]);
  const load = analyse(document).report.situations["rest"]!.parts["r1"]!;
  // 48 W at 24 V is 12 ohm: 2.1 A of 25.2 V through 12 milliohm of batteries and a milliohm of wire.
  expect(load.volts).toBeCloseTo(25.17, 2);
  expect(load.lossV).toBeCloseTo(0.03, 2);
});
