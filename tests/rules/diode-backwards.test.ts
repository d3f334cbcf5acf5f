import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, feedOn } from "./failing-circuits.ts";

const [coil, plain] = failing["diode-backwards"]!;

test("a coil's diode that conducts when its trigger comes on", () => {
  expect(snagsOf(coil!, "diode-backwards")).toMatchObject([{ level: "stop", at: ["k1", "k1.86", "k1.85"] }]);
});

test("a diode from a live wire straight to ground", () => {
  expect(snagsOf(plain!, "diode-backwards")).toMatchObject([
    { level: "stop", at: ["d1", "d1.K", "d1.A"], measure: { when: "s1 is on" } },
  ]);
});

test("the right way round, and a blocking diode in a feed, are passed", () => {
  const right = circuit(
    ["ff1:feed 10A spareA=5 monitored=no pulsed=no > d1:diode > k1:relay.86/85 suppression=diode > ground"],
    feedOn,
  );
  expect(placesOf(right, "diode-backwards")).toEqual([]);
});
