import { describe, expect, it } from "vitest";
import { covers, model, only } from "./model.ts";

const ohmOf = (props: Record<string, unknown>) => only(model("fuse", props), "protection").ohm;

describe("fuse", () => {
  // Usual resistance by rating: data sheet of a medium blade series, as the circuit file's contract prints it.
  it.each([
    [5, 17.85],
    [10, 7.7],
    [30, 1.97],
    [12.5, (7.7 + 4.8) / 2],
    [60, 57.6 / 60],
  ])("of %d A has %d milliohm when none is given", (ratingA, milliohm) => {
    expect(ohmOf({ ratingA })).toBeCloseTo(milliohm / 1000, 9);
  });

  it("takes the resistance given, and 0.1 milliohm when neither it nor the rating is known", () => {
    expect(ohmOf({ ratingA: 10, milliohm: 0 })).toBe(0);
    expect(ohmOf({})).toBe(0.0001);
    expect(only(model("fuse"), "protection").ratingA).toBeNull();
  });

  it("is out of the way of current and of faults while it is pulled", () => {
    expect(only(model("fuse", { fitted: false }), "protection")).toMatchObject({ closed: false, recloses: false });
  });

  it("is known by its body to the operating times, but for the bolt-down sort", () => {
    const gatesOf = (body: string) => only(model("fuse", { body }), "protection").gates;
    expect(["blade", "mini-blade", "maxi-blade", "glass", "bolt"].map(gatesOf)).toEqual([
      "blade",
      "mini-blade",
      "maxi-blade",
      "glass",
      null,
    ]);
  });

  it("has bare studs when it is bolted down, insulated ends else", () => {
    expect(covers("fuse")).toEqual({ "1": "covered bare", "2": "covered bare" });
    expect(covers("fuse", { body: "bolt" })).toEqual({ "1": "bare bare", "2": "bare bare" });
  });
});
