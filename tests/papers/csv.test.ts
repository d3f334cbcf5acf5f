import fc from "fast-check";
import { expect, test } from "vitest";
import { csv } from "../../core/papers/csv.ts";
import { readCsv } from "./support/read-csv.ts";

test("rows end in CRLF; commas, quotes and line breaks are quoted", () => {
  expect(
    csv([
      ["a", 1, null],
      ['say "no", twice', "two\nlines", ""],
    ]),
  ).toBe('a,1,\r\n"say ""no"", twice","two\nlines",\r\n');
});

test.each(["=1+1", "+1", "-1", "@sum", "\tx", "\rx"])(
  "text that a spreadsheet would run as a formula is defused: %j",
  (text) => {
    expect(readCsv(csv([[text]]))).toEqual([[`'${text}`]]);
  },
);

test("numbers stay numbers, also below zero", () => {
  expect(csv([[-1.5, 0]])).toBe("-1.5,0\r\n");
});

test("whatever is written reads back the same, but for defused formulas", () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(fc.string({ unit: "binary" }), { minLength: 2, maxLength: 4 }), { minLength: 1 }),
      (rows) => {
        const expected = rows.map((row) => row.map((text) => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text)));
        expect(readCsv(csv(rows))).toEqual(expected);
      },
    ),
  );
});
