import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [pins, otherHalf, unknown] = failing["live-pins"]!;

test("pins that stay live when the plug is parted are named, on whichever half they are", () => {
  expect(snagsOf(pins!, "live-pins")).toMatchObject([{ level: "fix", at: ["p1", "p1.a1"], measure: { volts: 12.6 } }]);
  expect(snagsOf(otherHalf!, "live-pins")).toMatchObject([{ at: ["p1", "p1.b1"] }]);
});

test("an unstated half is asked for where one stays live", () => {
  expect(snagsOf(unknown!, "live-pins")).toMatchObject([{ level: "cant-check", at: ["p1", "p1.a1"] }]);
});

test("sockets on the fed half, and pins that are dead at rest, are passed", () => {
  const plug = (text: string) => circuit(`bat:battery > f1:fuse 10A > ${text} > la1:lamp 21W > ground`, s1On);
  expect(placesOf(plug("p1:plug > s1:switch"), "live-pins")).toEqual([]);
  expect(placesOf(plug("s1:switch > p1:plug fedSide=pins"), "live-pins")).toEqual([]);
  expect(placesOf(plug("p1:plug.b1/a1 > s1:switch"), "live-pins")).toEqual([]);
});

test("with a battery on either side one half has pins that stay live, whichever sort the fed half has", () => {
  const link = (fedSide: string) =>
    circuit([
      `bat:battery > f1:fuse 10A > p1:plug fedSide=${fedSide} > f2:fuse 10A > b2:battery.+/- chassisBondMilliohm=null > ground`,
    ]);
  expect(snagsOf(link("sockets"), "live-pins")).toMatchObject([{ at: ["p1", "p1.b1"] }]);
  expect(snagsOf(link("pins"), "live-pins")).toMatchObject([{ at: ["p1", "p1.a1"] }]);
});

test("a return through the plug does not make pins live", () => {
  const both = circuit("bat:battery > f1:fuse 10A > p1:plug > la1:lamp 21W mustBeOffAtRest=false > p1.b2/a2 > ground");
  expect(placesOf(both, "live-pins")).toEqual([]);
});
