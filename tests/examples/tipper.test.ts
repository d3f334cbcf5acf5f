import { expect, test } from "vitest";
import { tipper, tipperPutRight } from "../../core/examples/tipper.ts";
import { foundIn, reportOn, voltsOf } from "./found.ts";

test("a 12 V coil on 24 V, a radio on one battery of two past its sensor, and a fuse too quick for the motor", () => {
  expect(foundIn(tipper)).toEqual([
    "advice rest-drain b1",
    "fix mid-tap r1",
    "fix sensor-bypassed w11",
    "fix start-surge m1",
    "stop wrong-voltage k1",
  ]);
  expect(foundIn(tipperPutRight)).toEqual([]);
});

test("the 12 V coil gets 27.6 V and four times the watts it is made for", () => {
  // Coil 90 ohm beside its 680 ohm resistor: 79.481 ohm. Ignition 20, T1 and T2 1.6 m and T3 0.3 m of 18.5 milliohm a metre 35.15,
  // switch 10 milliohm: 65.15 together.
  const coilV = (27.6 * 79.481) / (79.481 + 0.06515);
  const { k1 } = reportOn(tipper).situations["sheeting"]!.parts;
  expect(k1!.coilV).toBeCloseTo(coilV, 3);
  expect(coilV ** 2 / 90 / (13.8 ** 2 / 90)).toBeCloseTo(4, 1);
});

test("put right, the converter takes 1.41 A at 24 V for the radio's 30 W", () => {
  // Output: 13.2 V through 1.6 m of 12.7 milliohm a metre. Input watts are output watts over 0.85, at what is left of 25.2 V behind
  // 20 milliohm of the ignition wire and 0.9 m of 12.7 milliohm a metre.
  const radioA = 30 / voltsOf(30, 13.2, 1.6 * 0.0127);
  const inputW = (13.2 * radioA) / 0.85;
  const inputA = inputW / voltsOf(inputW, 25.2, 0.02 + 0.9 * 0.0127);
  const { parts, terminals } = reportOn(tipperPutRight).situations["waiting"]!;
  expect(parts["r1"]!.amps).toBeCloseTo(radioA, 3);
  expect(parts["u1"]!.amps).toBeCloseTo(inputA, 3);
  expect(terminals["r1.+"]!.volts).toBeCloseTo(13.2 - radioA * 0.8 * 0.0127, 3);
});
