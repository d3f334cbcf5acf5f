import { expect, test } from "vitest";
import { referenceTables, type ReferenceTable } from "../../core/reference/index.ts";

const modules = import.meta.glob<Record<string, unknown>>("../../core/reference/*.ts", { eager: true });

function isTable(thing: unknown): thing is ReferenceTable {
  return typeof thing === "object" && thing !== null && "rows" in thing && "unit" in thing && "source" in thing;
}

test("every table written is listed, once", () => {
  const written = Object.values(modules)
    .flatMap((module) => Object.values(module).flat())
    .filter(isTable);
  const listed = new Set(referenceTables);
  const missing = written.filter((table) => !listed.has(table)).map((table) => table.id);
  expect(missing, "ids to add to referenceTables in core/reference/registry.ts").toEqual([]);
  expect(new Set(referenceTables.map((table) => table.id)).size).toBe(referenceTables.length);
});

test.each(referenceTables.map((table) => [table.id, table] as const))(
  "%s says unit, source and range",
  (_id, table) => {
    expect(table.title).not.toBe("");
    expect(table.range, "where the values hold").toMatch(/\S{2}/);
    expect(table.rows.length).toBeGreaterThan(0);
    for (const row of table.rows) {
      expect(row.of, "what the value is of").not.toBe("");
      expect(row.source ?? table.source, `source of ${row.of}`).toMatch(/\S{3}/);
      if (typeof row.value !== "number") continue;
      expect(table.unit, `unit of ${row.of}`).not.toBe("");
      expect(Number.isFinite(row.value), `${row.of}: a finite value`).toBe(true);
    }
  },
);
