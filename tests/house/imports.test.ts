import { describe, expect, test, vi } from "vitest";
import { importTrouble } from "./import-rules.ts";
import { filesBelow, textOf } from "./tree.ts";

function troubleIn(files: Record<string, string>): string {
  return importTrouble(new Map(Object.entries(files))).join("\n");
}

test("core and app keep the import rules", () => {
  const paths = [...filesBelow("core"), ...filesBelow("app")];
  expect(importTrouble(new Map(paths.map((path) => [path, textOf(path)])))).toEqual([]);
});

describe("the import rules", () => {
  test("let a folder use what comes before it, through the front door", () => {
    const files = {
      "core/units/index.ts": `export * from "./length.ts";`,
      "core/units/length.ts": "",
      "core/parts/index.ts": `import { a } from "../units/index.ts";\nimport * as z from "zod/mini";`,
      "core/analyse.ts": `import type { P } from "./parts/index.ts";`,
      "app/main.tsx": `import { x } from "../core/analyse.ts";\nimport "react";\nimport { p } from "../core/parts/index.ts";`,
    };
    expect(troubleIn(files)).toBe("");
  });

  test("refuse a folder that comes later, and say which line", () => {
    const text = `/* import "x" */\nimport {\n  a,\n} from "../rules/index.ts";`;
    expect(troubleIn({ "core/parts/lamp.ts": text })).toMatch(
      /^core\/parts\/lamp\.ts:4: "\.\.\/rules\/index\.ts" points up: core\/parts comes before core\/rules/,
    );
  });

  test("count types, re-exports, dynamic imports and worker addresses as imports", () => {
    for (const text of [
      `import type { A } from "../rules/index.ts";`,
      `export { a } from "../rules/index.ts";`,
      `export * from "../rules/index.ts";`,
      `const rules = await import("../rules/index.ts");`,
      `const worker = new Worker(new URL("../rules/index.ts", import.meta.url));`,
    ])
      expect(troubleIn({ "core/parts/lamp.ts": text })).toContain("points up");
  });

  test("refuse a way past another folder's front door", () => {
    for (const from of ["core/parts/lamp.ts", "core/drill/faults.ts"])
      expect(troubleIn({ [from]: `import { a } from "../units/length.ts";` })).toContain(
        "goes past the front door; import core/units/index.ts",
      );
    const app = { "app/board/stage.ts": `import { a } from "../../core/units/length.ts";` };
    expect(troubleIn(app)).toContain("goes past the front door; import core/units/index.ts");
  });

  test.each([
    ["core/solver/solve.ts", "../geometry/index.ts", "may import only circuit and units"],
    ["core/document/edits.ts", "../circuit/index.ts", "may import only units and geometry"],
    ["core/parts/lamp.ts", "../solver/index.ts", "never imports core/solver"],
    ["core/examples/trailer.ts", "../parts/index.ts", "may import only document"],
    ["core/units/length.ts", "../../app/store/history.ts", "leaves core"],
    ["core/units/length.ts", "react", "not a package core may import"],
    ["core/units/length.ts", "node:fs", "not a package core may import"],
    ["core/units/length.ts", "../gadgets/index.ts", "has no place in the order"],
    ["core/units/length.ts", "./number", "imports carry their extension"],
    ["app/main.tsx", "../tests/support/circuit.ts", "nothing the program runs may import it"],
  ])("refuse %s importing %s", (from, specifier, reason) => {
    expect(troubleIn({ [from]: `import { a } from "${specifier}";` })).toContain(reason);
  });

  test("refuse rings of files", () => {
    const files = {
      "app/a.ts": `import "./b.ts";`,
      "app/b.ts": `import type { C } from "./c.ts";`,
      "app/c.ts": `import "./a.ts";`,
      "app/d.ts": `import "./a.ts";`,
    };
    expect(troubleIn(files)).toBe("app/c.ts:1: closes a ring: app/a.ts > app/b.ts > app/c.ts > app/a.ts");
  });
});

test("core loads where React and Konva cannot", async () => {
  for (const name of ["react", "react-dom", "konva", "react-konva", "zustand"])
    vi.doMock(name, () => {
      throw new Error(`core asked for ${name}`);
    });
  const modules = import.meta.glob("../../core/**/*.ts");
  const loaded = await Promise.all(Object.values(modules).map((load) => load()));
  expect(loaded.length).toBe(filesBelow("core").length);
});
