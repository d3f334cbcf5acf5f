import { expect, test } from "vitest";
import { circuit } from "../support/circuit.ts";
import { placesOf, snagsOf } from "../support/judged.ts";
import { failing, s1On } from "./failing-circuits.ts";

const [relay, bar] = failing["hot-bare"]!;

test("an unused 87a is live at rest, with the volts on it", () => {
  expect(snagsOf(relay!, "hot-bare")).toMatchObject([{ level: "stop", at: ["k1.87a"], measure: { volts: 12.6 } }]);
});

test("the posts of a bar are one place", () => {
  expect(snagsOf(bar!, "hot-bare").map(({ at }) => at)).toEqual([["x1.1", "x1.2", "x1.3", "x1.4"]]);
});

test("87a used on purpose, covered metal and empty cavities are passed", () => {
  const used = circuit(
    [
      "bat:battery > f1:fuse 10A > k1:relay.30/87a contact=changeover > r1:load 5W > ground",
      "f1.2 > s1:switch > k1.86",
      "k1.85 > ground",
      "k1.87 > r2:load 5W > ground",
    ],
    s1On,
  );
  expect(placesOf(used, "hot-bare")).toEqual([]);
  const covers = { "x1.1": "covered", "x1.2": "covered", "x1.3": "covered", "x1.4": "cavity" } as const;
  const covered = circuit("bat:battery > f1:fuse 30A > x1:bus posts=4 > s1:switch > la1:lamp 55W > ground", {
    ...s1On,
    covers,
  });
  expect(placesOf(covered, "hot-bare")).toEqual([]);
});

test("metal that is live only with something operated is passed", () => {
  const switched = circuit("bat:battery > f1:fuse 10A > s1:switch > x1:bus > la1:lamp 55W > ground", s1On);
  expect(placesOf(switched, "hot-bare")).toEqual([]);
});

test("metal that is live through a load is a lesser snag", () => {
  const behind = circuit(["bat:battery > f1:fuse 10A > la1:lamp 5W > s1:switch > ground"], {
    ...s1On,
    covers: { "s1.1": "bare" },
  });
  expect(snagsOf(behind, "hot-bare")).toMatchObject([{ level: "fix", at: ["s1.1"] }]);
});
