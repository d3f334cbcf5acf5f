import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { circuitJsonSchema } from "../../core/file/index.ts";

const published = new URL("../../core/file/circuit-file.schema.json", import.meta.url);

test("the published JSON Schema is the one that checks files: run `npm run schema` after changing a setting", () => {
  expect(JSON.parse(readFileSync(published, "utf8"))).toEqual(JSON.parse(JSON.stringify(circuitJsonSchema())));
});

test("every number in it has a smallest and a largest value", () => {
  const open: string[] = [];
  const walk = (value: unknown, path: string): void => {
    if (typeof value !== "object" || value === null) return;
    const node = value as Record<string, unknown>;
    const isFree = node["const"] === undefined && node["enum"] === undefined;
    const isBounded = node["minimum"] !== undefined && node["maximum"] !== undefined;
    if ((node["type"] === "number" || node["type"] === "integer") && isFree && !isBounded) open.push(path);
    for (const [key, inner] of Object.entries(node)) walk(inner, `${path}/${key}`);
  };
  walk(circuitJsonSchema(), "");
  expect(open).toEqual([]);
});

test("it states the defaults of the vehicle, of wires and of every part", () => {
  const text = JSON.stringify(circuitJsonSchema());
  expect(text).toContain('"default":12.6');
  expect(text).toMatch(/"insulationC":\{[^}]*"default":105/);
  expect(text).toMatch(/"fuseLoadPercent":\{[^}]*"default":70/);
});
