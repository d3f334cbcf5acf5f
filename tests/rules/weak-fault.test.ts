import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [long, thin] = failing["weak-fault"]!;

test("a short at the end of a long run may not blow the fuse in time", () => {
  expect(snagsOf(long!, "weak-fault")).toMatchObject([{ level: "fix", at: ["w3", "f1"] }]);
});

test("a fuse that opens in time may still let too much heat through for a thin wire", () => {
  const [snag] = snagsOf(thin!, "weak-fault");
  expect(snag?.at).toEqual(["w3", "f1"]);
  expect(snag?.measure["clearsWithinS"]).toBeLessThan(5);
  expect(snag?.measure["heatRatio"]).toBeGreaterThan(1);
});

test("a hard short behind a fuse that suits its wire is passed", () => {
  expect(
    placesOf(
      circuit("bat:battery > f1:fuse 20A > s1:switch >(14 AWG, 0.3 m)> la1:lamp 55W > ground", s1On),
      "weak-fault",
    ),
  ).toEqual([]);
});

// A device without published times counts as quick enough from twice its rating on (common practice, no source).
test("twice the rating of a breaker is enough, less is not", () => {
  const breaker = (mohm: number) =>
    circuit(
      `bat:battery 12V ${mohm}mohm >(10 AWG, 0 m)> q1:breaker 10A milliohm=0 reset=manual >(10 AWG, 0 m)> la1:lamp 5W > ground`,
    );
  expect(placesOf(breaker(600), "weak-fault")).toEqual([]);
  expect(placesOf(breaker(601), "weak-fault")).toEqual(["w2"]);
});
