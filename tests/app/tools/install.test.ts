import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { isInstalled } from "../../../app/tools/install.mjs";

const locked = {
  "": {},
  "node_modules/a": { version: "1.0.0" },
  "node_modules/for-windows": { version: "2.0.0", optional: true },
};

function folderWith(present: object | null): string {
  const folder = mkdtempSync(join(tmpdir(), "groundstrap-install-"));
  writeFileSync(join(folder, "package-lock.json"), JSON.stringify({ packages: locked }));
  mkdirSync(join(folder, "node_modules"));
  if (present) writeFileSync(join(folder, "node_modules", ".package-lock.json"), JSON.stringify({ packages: present }));
  return folder;
}

test.each([
  ["nothing was ever installed", null, false],
  ["a package is missing", {}, false],
  ["the lock moved on", { "node_modules/a": { version: "0.9.0" } }, false],
  ["only another machine's package is absent", { "node_modules/a": { version: "1.0.0" } }, true],
])("when %s the answer is right", (_case, present, expected) => {
  expect(isInstalled(folderWith(present))).toBe(expected);
});
