import { describe, expect, test } from "vitest";
import { cutList } from "../../core/papers/cut-list.ts";
import { awningLamps } from "./support/awning-lamps.ts";
import { campervan } from "./support/campervan.ts";
import { readCsv } from "./support/read-csv.ts";
import { said } from "./support/said.ts";
import { a5, sourceOf } from "./support/source.ts";

const [head = [], ...rows] = readCsv(cutList.make(sourceOf(awningLamps), a5));
const column = (row: readonly string[], name: string) => row[head.indexOf(name)]!;
const wires = rows.filter((row) => column(row, "wire") !== "total");
const totals = rows.filter((row) => column(row, "wire") === "total");

describe("the file", () => {
  test("every row has a cell for every column", () => {
    expect(rows.filter((row) => row.length !== head.length)).toEqual([]);
  });

  test("is sorted by size, thickest first, then colour, then longest first; the unknown length comes last", () => {
    expect(wires.map((row) => column(row, "wire"))).toEqual([
      "w11",
      "w10",
      "w2",
      "w1",
      "w6",
      "w7",
      "w8",
      "w9",
      "w5",
      "w3",
      "w4",
    ]);
  });

  test("cut length is the route and 0.1 m, in metres and feet", () => {
    const w2 = wires.find((row) => column(row, "wire") === "w2")!;
    expect(["route_m", "allowance_m", "cut_m"].map((name) => column(w2, name))).toEqual(["4.5", "0.1", "4.6"]);
    // 1 ft = 0.3048 m exactly (international yard, 1959): 4.6 m = 15.09 ft.
    expect(column(w2, "cut_ft")).toBe("15.09");
  });

  test("an unknown length stays empty and is counted, not summed", () => {
    const w9 = wires.find((row) => column(row, "wire") === "w9")!;
    expect([column(w9, "route_m"), column(w9, "cut_m")]).toEqual(["", ""]);
    const total = totals.find((row) => column(row, "size") === "1.5 mm2")!;
    expect(column(total, "label")).toBe("2 wires, 1 of unknown length");
    expect(column(total, "cut_m")).toBe("2.3");
  });

  test("totals agree with sums over the rows, and hold 15 % spare", () => {
    for (const total of totals) {
      const same = wires.filter(
        (row) =>
          column(row, "size") === column(total, "size") &&
          (column(row, "colour") || "not stated") === column(total, "colour"),
      );
      const sumM = same.reduce((sum, row) => sum + Number(column(row, "cut_m")), 0);
      expect(Number(column(total, "cut_m"))).toBeCloseTo(sumM, 3);
      expect(Number(column(total, "with_spare_m"))).toBeCloseTo(sumM * 1.15, 3);
    }
    const counted = totals.reduce((sum, row) => sum + Number.parseInt(column(row, "label"), 10), 0);
    expect(counted).toBe(wires.length);
  });
});

describe("the printed list", () => {
  test("gives both unit systems and the number of wires still to measure", () => {
    const text = said(cutList, sourceOf(awningLamps));
    expect(text).toContain("12 AWG (3.31 mm²), RD red");
    expect(text).toContain("15 ft 1 in (4.6 m)");
    expect(text).toMatch(/and 1 of unknown\s?\n?length/);
  });

  test("puts metres first where sizes are in mm²", () => {
    expect(said(cutList, sourceOf(campervan))).toContain("4.1 m (13 ft 5 in)");
  });
});
