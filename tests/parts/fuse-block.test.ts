import { describe, expect, it } from "vitest";
import { factsOf, kindOf, terminalsOf } from "../../core/parts/index.ts";
import { covers, model } from "./model.ts";

const ways = [{ ratingA: 10 }, { ratingA: 20, fitted: false }, { milliohm: 3 }];

describe("fuse block", () => {
  it("has a device for each way between feed and the way's terminal, named by it", () => {
    expect(model("fuse-block", { ways })).toEqual([
      expect.objectContaining({
        type: "protection",
        a: "feed",
        b: "1",
        ratingA: 10,
        ohm: 0.0077,
        closed: true,
        terminal: "1",
      }),
      expect.objectContaining({ b: "2", ratingA: 20, closed: false, recloses: false, terminal: "2" }),
      expect.objectContaining({ b: "3", ratingA: null, ohm: 0.003, closed: true, terminal: "3" }),
    ]);
  });

  it("has a terminal for its feed and one for each way, bare while unwired", () => {
    expect(terminalsOf({ id: "x", kind: "fuse-block", props: { ways } }).map(({ name }) => name)).toEqual([
      "feed",
      "1",
      "2",
      "3",
    ]);
    expect(covers("fuse-block", { ways })["2"]).toBe("covered bare");
  });

  it("takes 1 to 64 ways and no more", () => {
    const accepts = (count: number) =>
      kindOf("fuse-block")!.settings["ways"]!.schema.safeParse(Array.from({ length: count }, () => ({}))).success;
    expect([0, 1, 64, 65].map(accepts)).toEqual([false, true, true, false]);
  });

  it("tells the rating of its body", () => {
    expect(factsOf({ id: "x", kind: "fuse-block" }).ratedA).toBeNull();
    expect(factsOf({ id: "x", kind: "fuse-block", props: { ratedA: 100 } }).ratedA).toBe(100);
  });
});
