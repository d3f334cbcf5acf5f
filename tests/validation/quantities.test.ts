import { describe, expect, it } from "vitest";
import { errorOf } from "./quantity.ts";
import { quantities } from "./quantities.ts";

describe.each(quantities)("$quantity, against $source", (quantity) => {
  it.each(quantity.checks)("$of is $expected", (check) => {
    expect(errorOf(quantity, check)).toBeLessThanOrEqual(quantity.limit);
  });
});
