import { describe, expect, it } from "vitest";
import { kindOf, settingsOf } from "../../core/parts/index.ts";
import { covers, model } from "./model.ts";

/** Which terminals each position joins, as "30-75". */
function joins(kind: string): Record<string, string[]> {
  const control = kindOf(kind)!.control!(settingsOf({ id: "s", kind }))!;
  const elements = model(kind);
  return Object.fromEntries(
    control.positions.map((position) => [
      position,
      elements.flatMap((element) =>
        element.type === "contact" && "positions" in element.movedBy && element.movedBy.positions.includes(position)
          ? [`${element.a}-${element.b}`]
          : [],
      ),
    ]),
  );
}

describe("switches", () => {
  it("join what their positions say, and nothing at rest", () => {
    expect(joins("switch")).toEqual({ off: [], on: ["1-2"] });
    expect(joins("changeover-switch")).toEqual({ off: [], "1": ["common-1"], "2": ["common-2"] });
    expect(joins("key-switch")).toEqual({
      off: [],
      accessory: ["30-75"],
      on: ["30-75", "30-15"],
      start: ["30-15", "30-50"],
    });
  });

  it.each(["switch", "changeover-switch", "key-switch"])(
    "%s has 10 milliohm a contact and no rating until given",
    (kind) => {
      for (const element of model(kind)) expect(element).toMatchObject({ ohm: 0.01, ratedA: null });
      for (const element of model(kind, { milliohm: 0, ratedA: 20 }))
        expect(element).toMatchObject({ ohm: 0, ratedA: 20 });
    },
  );

  it.each(["switch", "changeover-switch", "key-switch"])("%s has bare tabs where nothing is plugged on", (kind) => {
    expect(new Set(Object.values(covers(kind)))).toEqual(new Set(["covered bare"]));
  });
});
