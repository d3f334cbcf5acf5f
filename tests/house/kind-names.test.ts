import { describe, expect, test } from "vitest";
import { kindNamesIn } from "./kind-names.ts";
import { filesBelow, textOf } from "./tree.ts";

/** Files that may name kinds, each with its reason. Keep it short. */
const ALLOWED: Readonly<Record<string, string>> = {
  "core/papers/code/code-words.ts":
    "text that packs circuit files small, frozen with the format; nothing is decided by it",
};

const modules = import.meta.glob<Record<string, unknown>>("../../core/parts/*.ts", { eager: true });
const kinds = Object.values(modules)
  .flatMap((module) => Object.values(module))
  .flatMap((thing) => (typeof thing === "object" && thing !== null && "kind" in thing ? [String(thing.kind)] : []));

test("only core/parts and core/examples name part kinds", () => {
  const paths = [...filesBelow("core"), ...filesBelow("app")].filter(
    (path) => !path.startsWith("core/parts/") && !path.startsWith("core/examples/") && !(path in ALLOWED),
  );
  expect(paths.flatMap((path) => kindNamesIn(path, textOf(path), kinds))).toEqual([]);
});

describe("the search for kind names", () => {
  const found = (text: string) => kindNamesIn("app/board/marks.ts", text, ["key-switch", "relay", "diode", "lamp"]);

  test.each([
    `if (part.kind === "relay") return;`,
    `if ("lamp" === part.kind) return;`,
    `const special = ["key-switch"];`,
    `const part = { id, kind: "diode" };`,
    `if (kinds.has("lamp")) return;`,
    `switch (part.kind) {`,
  ])("finds %s", (text) => {
    expect(found(`\n${text}`)).toHaveLength(1);
    expect(found(`\n${text}`)[0]).toContain("app/board/marks.ts:2 ");
  });

  test.each([
    `if (element.type === "diode") return;`,
    `case "lamp":`,
    `// part.kind === "relay"`,
    `/* "relay" */`,
    `const title = "a relay";`,
    `<p>Try "relay".</p>`,
  ])("passes %s", (text) => {
    expect(found(text)).toEqual([]);
  });
});
