import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const strip = (second: string) =>
  circuit(
    [
      "bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W > g1:strip posts=5",
      `${second} > la2:lamp 5W > g1.3`,
      "g1.2 > ground",
    ],
    s1On,
  );

test("a shared return whose loss sends the current back through another lamp: series wires are one place", () => {
  const [snag, ...more] = snagsOf(failing["lost-ground"]![0]!, "lost-ground");
  expect(snag).toMatchObject({ level: "advice", at: ["w7", "w8", "la2"], measure: { situation: "working" } });
  expect(snag?.measure["volts"]).toBeGreaterThan(10);
  expect(more).toEqual([]);
});

test("where the other lamp leads nowhere else it can't become the way back", () => {
  expect(placesOf(strip("f1.2 > s2:switch"), "lost-ground")).toEqual([]);
});

test("a second return keeps them apart", () => {
  const two = circuit(
    [
      "bat:battery > f1:fuse 10A > s1:switch > la1:lamp 21W > g1:strip posts=5",
      "ff1:feed 5A 3ohm spareA=5 > la2:lamp 5W > g1.3",
      "g1.2 > ground",
      "g1.4 > ground",
    ],
    s1On,
  );
  expect(placesOf(two, "lost-ground")).toEqual([]);
});
