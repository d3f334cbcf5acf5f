import { describe, expect, it } from "vitest";
import { kindOf, terminalsOf } from "../../core/parts/index.ts";

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
