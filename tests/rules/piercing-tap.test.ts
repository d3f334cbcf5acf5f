import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing } from "./failing-circuits.ts";

test("a tap that bites into the wire", () => {
  expect(snagsOf(failing["piercing-tap"]![0]!, "piercing-tap")).toMatchObject([{ level: "advice", at: ["j1"] }]);
});

test.each(["tap=crimp", "tap=solder", ""])("other joints are passed: %s", (tap) => {
  expect(
    placesOf(
      circuit(`bat:battery > f1:fuse 10A > j1:splice ${tap} > s1:switch > la1:lamp 5W > ground`),
      "piercing-tap",
    ),
  ).toEqual([]);
});
