import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [holder, body, diode] = failing["under-rated"]!;
const through = (part: string, fuse = "f1:fuse 20A") =>
  circuit(`bat:battery > ${fuse} > ${part} > s1:switch > la1:lamp 55W > ground`, s1On);

test("a holder, a switch and a diode that stand less than comes", () => {
  expect(snagsOf(holder!, "under-rated")).toMatchObject([{ at: ["f1"], measure: { ratedA: 20, guardA: 30 } }]);
  expect(snagsOf(body!, "under-rated")).toMatchObject([
    { at: ["s1", "s1.1", "s1.2", "f1"], measure: { ratedA: 10, guardA: 30 } },
  ]);
  expect(snagsOf(diode!, "under-rated")).toMatchObject([{ at: ["d1", "d1.A"], measure: { ratedA: 3 } }]);
});

test.each(["p1:plug 15A", "x1:bus 15A", 'x1:block 15A ways=[{"ratingA":10}]'])("%s behind 20 A is too weak", (part) => {
  expect(placesOf(through(part), "under-rated")).toEqual([part.slice(0, 2)]);
});

test.each(["p1:plug 20A", "x1:bus 20A", 'x1:block 20A ways=[{"ratingA":10}]'])(
  "a rating equal to the fuse's is enough: %s",
  (part) => {
    expect(placesOf(through(part), "under-rated")).toEqual([]);
  },
);

test("a part behind a smaller fuse is judged by that one", () => {
  expect(placesOf(through("p1:plug 10A", 'x1:block 30A ways=[{"ratingA":10}]'), "under-rated")).toEqual([]);
});
