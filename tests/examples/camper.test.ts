import { expect, test } from "vitest";
import { camper, camperPutRight } from "../../core/examples/camper.ts";
import { foundIn, reportOn, voltsOf } from "./found.ts";

test("the link is fused at one end, the fridge starves, its return is shared and thin, and nothing switches it off", () => {
  expect(foundIn(camper)).toEqual([
    "advice ground-drop r1",
    "advice rest-drain b2",
    "fix drop-high r1",
    "fix return-small w16",
    "stop no-fuse w2",
    "stop no-fuse w3",
  ]);
  expect(foundIn(camperPutRight)).toEqual([]);
});

test("the link is open towards the house battery", () => {
  const { snags } = reportOn(camper);
  expect(snags.filter(({ rule }) => rule === "no-fuse").map(({ at }) => at)).toEqual([
    ["w2", "b2"],
    ["w3", "b2"],
  ]);
});

test("the fridge gets 11.25 V at rest and flattens half the house battery in 9 hours", () => {
  // Milliohm a metre by ISO 6722: 1 mm2 18.5, 1.5 mm2 12.7, 10 mm2 1.82, 25 mm2 0.743.
  // Battery 4, H1 0.111, fuse 40 A 1.44, H2 1.456, fuse 10 A 7.7, H3 111, G1 111, G4 5.08 milliohm: 241.79 together.
  const volts = voltsOf(72, 12.8, 0.24179);
  const { situations, summary } = reportOn(camper);
  expect(situations["rest"]!.parts["r1"]!.volts).toBeCloseTo(volts, 3);
  expect(summary.restDrainA).toBeCloseTo(72 / volts, 3);
  expect(summary.daysToHalf).toBeCloseTo(60 / (72 / volts) / 24, 3);
});
