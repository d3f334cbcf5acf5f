import { expect, test } from "vitest";
import { filesBelow, textOf } from "./tree.ts";

const TEXT = /\.(tsx?|mjs|js|jsonc?|css|html|md|svg|csv|webmanifest)$/;
const paths = [
  ...["core", "app", "tests", "e2e"].flatMap((folder) => filesBelow(folder, TEXT)),
  "package.json",
  "package-lock.json",
  "tsconfig.json",
  ".npmrc",
];

test("the lock file holds no download address and every package its checksum", () => {
  const { packages } = JSON.parse(textOf("package-lock.json")) as { packages: Record<string, Record<string, unknown>> };
  const entries = Object.entries(packages).filter(([place]) => place !== "");
  expect(entries.filter(([, entry]) => "resolved" in entry).map(([place]) => place)).toEqual([]);
  expect(entries.filter(([, entry]) => !("integrity" in entry)).map(([place]) => place)).toEqual([]);
});

test("no file names a package registry or a folder of somebody's machine", () => {
  const trouble = paths.flatMap((path) =>
    textOf(path)
      .split("\n")
      .flatMap((line, at) => (foreign(line) ? [`${path}:${at + 1}: ${line.trim().slice(0, 100)}`] : [])),
  );
  expect(trouble).toEqual([]);
});

test.each([
  ["https://regis", "try.example.org/react.tgz"],
  ["open('/ho", "me/ann/x.json')"],
  ["'/wo", "rk/main'"],
  [`"C`, `:\\Users\\ann"`],
])("%s%s is found", (start, end) => {
  expect(foreign(start + end)).toBe(true);
});

function foreign(line: string): boolean {
  return (
    /https?:\/\/(registry|npm|artifactory|nexus|verdaccio)\./i.test(line) ||
    /["'`\s(=](\/(home|root|work|tmp|Users)\/|[A-Z]:\\)/.test(line)
  );
}
