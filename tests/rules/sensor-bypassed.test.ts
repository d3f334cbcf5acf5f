import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const returning = (battery: string, to: string) =>
  circuit(`bat:battery ${battery} > f1:fuse 10A > s1:switch > la1:lamp 55W > ${to}`, s1On);

test("a return on the post past its sensor", () => {
  expect(snagsOf(failing["sensor-bypassed"]![0]!, "sensor-bypassed")).toMatchObject([
    { level: "fix", at: ["w4", "bat.-"] },
  ]);
});

test("a return to the chassis, and a battery without a sensor, are passed", () => {
  expect(placesOf(returning("sensor=true", "ground"), "sensor-bypassed")).toEqual([]);
  expect(placesOf(returning("", "bat.-"), "sensor-bypassed")).toEqual([]);
});

test("the vehicle's own strap drawn as a wire, and a link to another battery, are no returns", () => {
  const strap = circuit(
    [
      "bat:battery sensor=true chassisBondMilliohm=null > f1:fuse 10A > s1:switch > la1:lamp 5W > ground",
      "bat.- > ground",
    ],
    s1On,
  );
  expect(placesOf(strap, "sensor-bypassed")).toEqual([]);
  const pair = circuit(["b1:battery sensor=true > f1:fuse 10A", "b1.- > b2:battery.-"]);
  expect(placesOf(pair, "sensor-bypassed")).toEqual([]);
});
