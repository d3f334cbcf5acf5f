import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { columnWidths, tableBlock, type Table } from "../../../core/papers/layout/index.ts";

const table = (heads: readonly string[], ...rows: readonly (readonly string[])[]): Table => ({
  columns: heads.map((head) => ({ head })),
  rows: rows.map((cells) => ({ cells })),
});

describe("column widths", () => {
  test("add up to the width there is, whatever stands in the cells", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.string({ maxLength: 300 }), { minLength: 4, maxLength: 4 }), { maxLength: 5 }),
        (rows) => {
          const widths = columnWidths(table(["Wire", "Colour", "From", "To"], ...rows), 190);
          expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(190, 6);
          expect(Math.min(...widths)).toBeGreaterThan(5);
        },
      ),
    );
  });

  test("room left over goes to the columns that grow", () => {
    const { columns, rows } = table(["Wire", "From"], ["w1", "F1"]);
    const [fixed, growing] = columnWidths({ columns: [columns[0]!, { ...columns[1]!, grow: 1 }], rows }, 190);
    expect(growing!).toBeGreaterThan(fixed! * 5);
  });

  test("a long cell gives up room before a short one does", () => {
    const [short, long] = columnWidths(table(["Wire", "Where"], ["w12 L12", "word ".repeat(200)]), 60);
    expect(short!).toBeGreaterThan(13);
    expect(long!).toBeCloseTo(60 - short!, 6);
  });
});

test("an empty table says so in words", () => {
  const [strip] = tableBlock({ ...table(["Fuse"]), none: "No fuse is drawn." }, 100).strips;
  expect(strip!.draw(0, 0).join("")).toContain("No fuse is drawn.");
});
