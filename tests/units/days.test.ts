import { expect, test } from "vitest";
import { formatDays } from "../../core/units/index.ts";

test.each([
  [0, "under an hour"],
  [0.03, "under an hour"],
  [1 / 24, "about 1 hour"],
  [0.5, "about 12 hours"],
  [1.99, "about 47 hours"],
  [2, "about 2 days"],
  [11.9, "about 11 days"],
])("%d days read %s", (days, words) => expect(formatDays(days)).toBe(words));
