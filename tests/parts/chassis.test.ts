import { describe, expect, it } from "vitest";
import { CHASSIS, factsOf, terminalsOf } from "../../core/parts/index.ts";
import { model } from "./model.ts";

describe("chassis point", () => {
  it("is joined to the one chassis by its joint, and tells what it is screwed to", () => {
    expect(model("chassis", { jointMilliohm: 3 })).toEqual([{ type: "link", a: "g", b: CHASSIS, ohm: 0.003 }]);
    expect(factsOf({ id: "g", kind: "chassis" }).surface).toBe("clean");
    expect(terminalsOf({ id: "g", kind: "chassis" })[0]!.fixing).toBe("ground-screw");
  });
});
