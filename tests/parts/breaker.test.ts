import { describe, expect, it } from "vitest";
import { covers, model, only } from "./model.ts";

describe("breaker", () => {
  it("is 4 milliohm of protection that can close again, also while it is open", () => {
    expect(only(model("breaker", { ratingA: 30 }), "protection")).toMatchObject({
      ohm: 0.004,
      ratingA: 30,
      closed: true,
      recloses: true,
    });
    expect(only(model("breaker", { closed: false }), "protection")).toMatchObject({ closed: false, recloses: true });
  });

  it("comes back by itself only when it is of that sort", () => {
    const autoReset = (reset: string) => only(model("breaker", { reset }), "protection").autoReset;
    expect(["auto", "held", "manual"].map(autoReset)).toEqual([true, false, false]);
  });

  it("stands on bare studs, wired or not", () => {
    expect(covers("breaker")).toEqual({ "1": "bare bare", "2": "bare bare" });
  });
});
