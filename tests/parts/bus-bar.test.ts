import { describe, expect, it } from "vitest";
import { factsOf, kindOf } from "../../core/parts/index.ts";
import { covers, model } from "./model.ts";

describe("bus bar", () => {
  it("is one node of as many posts as it says, bare until covered", () => {
    expect(model("bus-bar", { posts: 3 })).toEqual([{ type: "bar", terminals: ["1", "2", "3"] }]);
    expect(covers("bus-bar", { posts: 2 })).toEqual({ "1": "bare bare", "2": "bare bare" });
  });

  it("takes a whole number of posts from 1 to 64", () => {
    const accepts = (posts: unknown) => kindOf("bus-bar")!.settings["posts"]!.schema.safeParse(posts).success;
    expect([0, 1, 2.5, 64, 65].map(accepts)).toEqual([false, true, false, true, false]);
  });

  it("is no return: it spreads a feed", () => {
    expect(factsOf({ id: "x", kind: "bus-bar" }).returnBar).toBeUndefined();
  });
});
