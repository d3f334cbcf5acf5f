import { describe, expect, it } from "vitest";
import { factsOf } from "../../core/parts/index.ts";
import { covers, model } from "./model.ts";

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
