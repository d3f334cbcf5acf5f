import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [fuse, feed] = failing["fuse-blows"]!;
const drawing = (amps: number) =>
  circuit(`bat:battery > f1:fuse 10A > s1:switch > r1:load amps=${amps} model=constant-current > ground`, s1On);

test("amps over the rating of a fuse, or of the vehicle's own fuse ahead of a feed", () => {
  expect(placesOf(fuse!, "fuse-blows")).toEqual(["f1"]);
  expect(placesOf(feed!, "fuse-blows")).toEqual(["ff1"]);
});

test("amps equal to the rating are within it", () => {
  expect(placesOf(drawing(10), "fuse-blows")).toEqual([]);
  expect(placesOf(drawing(10.001), "fuse-blows")).toEqual(["f1"]);
});

test("a converter gives no more than its limit", () => {
  const converter = (amps: number) =>
    circuit(
      [
        "bat:battery > f1:fuse 30A > u1:converter 12V 5A > s1:switch > r1:load.+/- model=constant-current amps=" +
          amps +
          " > u1.out-",
        "u1.in- > ground",
      ],
      s1On,
    );
  expect(placesOf(converter(5), "fuse-blows")).toEqual([]);
  expect(placesOf(converter(6), "fuse-blows")).toEqual(["u1"]);
});
