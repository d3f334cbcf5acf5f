import { expect, test } from "vitest";
import { readingRows, takenAt, withReading } from "../../../app/papers/reading-rows.ts";
import { passes } from "../../../core/papers/index.ts";
import { awningLamps } from "../../papers/support/awning-lamps.ts";
import { sourceOf } from "../../papers/support/source.ts";

const rows = readingRows(sourceOf(awningLamps));
const points = rows.flatMap(({ point }) => (point ? [point] : []));

test("the expected reading of every row passes its own limits", () => {
  expect(points.length).toBeGreaterThan(10);
  expect(points.filter((point) => point.expected === null || !passes(point, point.expected))).toEqual([]);
});

test("no two readings of a sheet are taken at the same point, so that none overwrites another", () => {
  const keys = points.map(({ situation, meter, red, black }) => [situation, meter, red, black].join(" "));
  expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
});

test("a reading taken again replaces the first", () => {
  const [point, other] = points as [(typeof points)[0], (typeof points)[0]];
  const once = withReading(withReading([], point, 1, "2026-05-01"), other, 2, "2026-05-01");
  const again = withReading(once, point, 3, "2026-05-02");
  expect(again).toHaveLength(2);
  expect(takenAt(point, again)).toMatchObject({ value: 3, date: "2026-05-02" });
  expect(takenAt(other, again)).toMatchObject({ value: 2 });
});
