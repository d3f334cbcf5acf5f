import { existsSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { registryTrouble, type Family } from "./registry-rules.ts";

type Modules = Record<string, Record<string, unknown>>;

/** The files of a folder of core, loaded. */
function family(modules: Modules, folder: string, name: (thing: Record<string, unknown>) => unknown): Family {
  const files = new Map(Object.entries(modules).map(([path, module]) => [path.replace("../../", ""), module]));
  return { folder, files, nameOf: name };
}

const parts = family(import.meta.glob("../../core/parts/*.ts", { eager: true }), "core/parts", (thing) =>
  typeof thing["model"] === "function" && typeof thing["terminals"] === "function" ? thing["kind"] : undefined,
);
const rules = family(import.meta.glob("../../core/rules/*.ts", { eager: true }), "core/rules", (thing) =>
  typeof thing["check"] === "function" && typeof thing["say"] === "function" ? thing["id"] : undefined,
);
const papers = family(import.meta.glob("../../core/papers/*.ts", { eager: true }), "core/papers", (thing) =>
  typeof thing["make"] === "function" ? thing["kind"] : undefined,
);

describe.each([parts, rules, papers])("$folder", (members) => {
  test("each file is named after its one member and stands in the index", () => {
    expect(registryTrouble(members)).toEqual([]);
  });
});

test.each([parts, rules])("each member of $folder has its test file", ({ folder, files, nameOf }) => {
  const owed = [...files.values()]
    .flatMap((module) => Object.values(module))
    .map((thing) =>
      typeof thing === "object" && thing !== null ? nameOf(thing as Record<string, unknown>) : undefined,
    )
    .filter((name) => typeof name === "string")
    .map((name) => `${folder.replace("core", "tests")}/${name}.test.ts`);
  const missing = [...new Set(owed)].filter((path) => !existsSync(new URL(`../../${path}`, import.meta.url)));
  expect(missing, "test files to write").toEqual([]);
});

// An example and its put-right twin share a file, so each name begins with the file's.
test("each example of core/examples is listed and has its file's name", () => {
  const modules: Modules = import.meta.glob("../../core/examples/*.ts", { eager: true });
  const listed = Object.values(modules["../../core/examples/index.ts"] ?? {})
    .filter(Array.isArray)
    .flat();
  const trouble = Object.entries(modules).flatMap(([path, module]) => {
    const file = path.replace(/^.*\//, "").replace(".ts", "");
    if (file === "index") return [];
    return Object.entries(module).flatMap(([exported, thing]) => {
      if (!isExample(thing)) return [];
      const entry = listed.find((item) => item === thing || Object.values(item as object).includes(thing)) as unknown;
      if (!entry) return [`${exported} of core/examples/${file}.ts: add it to the list in core/examples/index.ts`];
      const { id = file } = entry as { id?: string };
      return id.startsWith(file) ? [] : [`core/examples/${file}.ts holds "${id}": give both one name`];
    });
  });
  expect(trouble).toEqual([]);
});

function isExample(thing: unknown): boolean {
  if (typeof thing !== "object" || thing === null) return false;
  const { format, document } = thing as { format?: string; document?: { format?: string } };
  return format === "groundstrap" || document?.format === "groundstrap";
}

describe("the registry rules", () => {
  const named = (thing: Record<string, unknown>) => thing["kind"];
  const lamp = { kind: "lamp" };
  const index = (list: unknown[]) => ["core/parts/index.ts", { partKinds: list }] as const;
  const troubleOf = (...files: (readonly [string, Record<string, unknown>])[]) =>
    registryTrouble({ folder: "core/parts", files: new Map(files), nameOf: named }).join("\n");

  test("accept a member that is listed, and files that hold no member", () => {
    expect(troubleOf(index([lamp]), ["core/parts/lamp.ts", { lamp }], ["core/parts/wording.ts", { word: "a" }])).toBe(
      "",
    );
  });

  test("name the line that is missing", () => {
    expect(troubleOf(index([]), ["core/parts/lamp.ts", { lamp }])).toBe(
      `core/parts/lamp.ts is not registered: add "lamp" to the list in core/parts/index.ts, with import { lamp } from "./lamp.ts"`,
    );
  });

  test("want the file to have its member's name", () => {
    expect(troubleOf(index([lamp]), ["core/parts/light.ts", { lamp }])).toBe(
      `core/parts/light.ts holds "lamp": rename the file to core/parts/lamp.ts`,
    );
  });

  test("want one member in a file, and each name once", () => {
    const other = { kind: "lamp" };
    const text = troubleOf(index([lamp, other]), ["core/parts/lamp.ts", { lamp, other }]);
    expect(text).toContain(`core/parts/lamp.ts holds 2 members: give each a file of its own`);
  });
});
