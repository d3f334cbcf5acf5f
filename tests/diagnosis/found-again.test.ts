import { expect, test } from "vitest";
import { readingRows, takenAt, withReading } from "../../app/papers/reading-rows.ts";
import { analyse } from "../../core/analyse.ts";
import { withExtraOhm } from "../../core/diagnosis/changed-net.ts";
import { diagnose } from "../../core/diagnosis/index.ts";
import { predictorOf } from "../../core/diagnosis/predict.ts";
import type { Document, TakenReading } from "../../core/document/index.ts";
import { EXAMPLES } from "../../core/examples/index.ts";
import { passes } from "../../core/papers/index.ts";

/** Every reading of the test sheet as a two-decimal meter shows it on the drawing with 0.3 ohm too much in one wire; dead checks left out. */
function takenWithPoor(wire: string, document: Document) {
  const { study, report } = analyse(document);
  const { netlist } = study;
  const predict = predictorOf(withExtraOhm(netlist, netlist.wireAt.get(wire)!.branch, 0.3));
  const points = readingRows({ document, netlist, report }).flatMap(({ point }) =>
    point && point.meter !== "ohm" ? [point] : [],
  );
  let readings: readonly TakenReading[] = [];
  for (const point of points) {
    const value = predict({ ...point, value: 0 });
    if (value !== null) readings = withReading(readings, point, Number(value.toFixed(2)), "2026-05-01");
  }
  const wrong = points.flatMap((point) => {
    const reading = takenAt(point, readings);
    return reading && !passes(point, reading.value) ? [reading] : [];
  });
  return { readings, wrong };
}

const put = EXAMPLES.filter(({ name }) => name === "orchard-tractor-put-right");
const cases = put.flatMap(({ name, document }) => document.wires.map(({ id }) => ({ name, id, document })));

test.each(cases)(
  "0.3 ohm too much in $id of $name is blamed on $id by the first wrong reading and by the last",
  ({ id, document }) => {
    const { readings, wrong } = takenWithPoor(id, document);
    const blamed = wrong
      .filter((_, at) => at === 0 || at === wrong.length - 1)
      .map((reading) => diagnose(document, readings, reading)[0]?.at ?? []);
    expect(blamed.filter((places) => !places.includes(id))).toEqual([]);
  },
);
