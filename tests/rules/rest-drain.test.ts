import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

const drawing = (amps: number, more = "60Ah") =>
  circuit(`bat:battery ${more} > f1:fuse 5A > r1:load amps=${amps} model=constant-current > ground`);

test("what is drawn at rest, from what, by what, and for how long", () => {
  const [snag] = snagsOf(failing["rest-drain"]![0]!, "rest-drain");
  expect(snag).toMatchObject({ level: "advice", at: ["bat", "r1"] });
  expect(snag?.measure["restDrainA"]).toBeCloseTo(1 / (12 ** 2 / 12.6), 2);
});

// 30 Ah of 60 at 0.1 A last 300 hours.
test("days to half charge, where the capacity is stated", () => {
  const days = snagsOf(drawing(0.1), "rest-drain")[0]?.measure["daysToHalf"];
  expect(days).toBeCloseTo(12.5, 9);
  expect(snagsOf(drawing(0.1, ""), "rest-drain")[0]?.measure["daysToHalf"]).toBeNull();
});

test("50 mA are within the limit", () => {
  expect(placesOf(drawing(0.05), "rest-drain")).toEqual([]);
  expect(placesOf(drawing(0.0501), "rest-drain")).toEqual(["bat"]);
});
