import { describe, expect, it } from "vitest";
import { CHASSIS, factsOf, kindOf, terminalsOf } from "../../core/parts/index.ts";
import { covers, model } from "./model.ts";

describe.each(["ground-strip", "bus-bar"])("%s", (kind) => {
  it("is one node of as many posts as it says, bare until covered", () => {
    expect(model(kind, { posts: 3 })).toEqual([{ type: "bar", terminals: ["1", "2", "3"] }]);
    expect(covers(kind, { posts: 2 })).toEqual({ "1": "bare bare", "2": "bare bare" });
  });

  it("takes a whole number of posts from 1 to 64", () => {
    const accepts = (posts: unknown) => kindOf(kind)!.settings["posts"]!.schema.safeParse(posts).success;
    expect([0, 1, 2.5, 64, 65].map(accepts)).toEqual([false, true, false, true, false]);
  });
});

describe("ground strip and bus bar", () => {
  it("differ in that the strip gathers returns", () => {
    expect(factsOf({ id: "g", kind: "ground-strip" }).returnBar).toBe(true);
    expect(factsOf({ id: "x", kind: "bus-bar" }).returnBar).toBeUndefined();
  });
});

describe("chassis point", () => {
  it("is joined to the one chassis by its joint, and tells what it is screwed to", () => {
    expect(model("chassis", { jointMilliohm: 3 })).toEqual([{ type: "link", a: "g", b: CHASSIS, ohm: 0.003 }]);
    expect(factsOf({ id: "g", kind: "chassis" }).surface).toBe("clean");
    expect(terminalsOf({ id: "g", kind: "chassis" })[0]!.fixing).toBe("ground-screw");
  });
});

describe("splice", () => {
  const barrel = kindOf("splice")!.settings["barrel"]!.schema;

  it.each(["red", "blue", "yellow", "1.5-2.5 mm2", "0.5 - 1 mm2", "4 to 6 mm2", null])(
    "takes %s as its barrel",
    (value) => {
      expect(barrel.safeParse(value).success).toBe(true);
    },
  );

  it.each(["green", "", "big", "1-2-3 mm2", 5])("refuses %s as its barrel", (value) => {
    expect(barrel.safeParse(value).success).toBe(false);
  });

  it("lets a wire leave on any side", () => {
    expect(terminalsOf({ id: "j", kind: "splice" })[0]).toMatchObject({ name: "s", anyExit: true });
  });
});

describe("plug and socket", () => {
  const part = { id: "p", kind: "plug", props: { ways: 2, functions: ["tail", ["brake", " ", "left turn"]] } };

  it("joins each way's halves by one mated contact", () => {
    expect(model("plug", { ways: 2 })).toEqual([
      { type: "link", a: "a1", b: "b1", ohm: 0.005 },
      { type: "link", a: "a2", b: "b2", ohm: 0.005 },
    ]);
  });

  it("has cavities where nothing is wired", () => {
    expect(covers("plug", { ways: 1 })).toEqual({ a1: "covered cavity", b1: "covered cavity" });
  });

  it("tells its pairs, its jobs and which contacts the fed half has, unknown until given", () => {
    expect(factsOf(part).plug).toEqual({
      fedSide: null,
      pairs: [
        ["a1", "b1"],
        ["a2", "b2"],
      ],
      functions: [["tail"], ["brake", "left turn"]],
    });
  });
});
