import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, feedOn } from "./failing-circuits.ts";

const [watched, unknown] = failing["coil-unsuppressed"]!;
const coil = (feed: string, relay: string) =>
  circuit(`ff1:feed 10A spareA=5 ${feed} > k1:relay.86/85 ${relay} > ground`, feedOn);

test("a bare coil on a feed the vehicle's electronics drive", () => {
  expect(snagsOf(watched!, "coil-unsuppressed")).toMatchObject([{ level: "fix", at: ["k1", "ff1", "k1.86", "k1.85"] }]);
  expect(placesOf(coil("monitored=no pulsed=yes", ""), "coil-unsuppressed")).toEqual(["k1"]);
});

test("an unknown feed is asked for", () => {
  expect(snagsOf(unknown!, "coil-unsuppressed")).toMatchObject([
    { level: "cant-check", at: ["k1", "ff1", "k1.86", "k1.85"] },
  ]);
  expect(snagsOf(coil("monitored=no", ""), "coil-unsuppressed")).toMatchObject([{ level: "cant-check" }]);
});

test("a plain feed, or a coil with a resistor or a diode, is passed", () => {
  expect(placesOf(coil("monitored=no pulsed=no", ""), "coil-unsuppressed")).toEqual([]);
  expect(placesOf(coil("monitored=yes pulsed=yes", "suppression=resistor"), "coil-unsuppressed")).toEqual([]);
  expect(placesOf(coil("monitored=yes", "suppression=diode"), "coil-unsuppressed")).toEqual([]);
});
