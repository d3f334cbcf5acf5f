import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { beforeAll, expect, test } from "vitest";

const runner = fileURLToPath(new URL("../../../app/tools/headless.mjs", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "groundstrap-headless-"));
const entry = join(folder, "headless-trial.ts");
const word = join(folder, "word.ts");

beforeAll(() => {
  writeFileSync(word, `export const word: string = "first";`);
  writeFileSync(
    entry,
    `import { word } from "./word.ts";
     export async function run(argv: string[], io): Promise<number> {
       if (argv[0] === "break") throw new Error("out of wire\\nsecond line");
       io.err("aside");
       io.out(word + " " + argv.join("+") + " " + new TextDecoder().decode(await io.read("-")));
       return 1;
     }`,
  );
});

function headless(...argv: string[]) {
  const env = { ...process.env, INIT_CWD: folder };
  const { status, stdout, stderr } = spawnSync(process.execPath, [runner, entry, ...argv], {
    input: "in µ",
    env,
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}

test("arguments and standard input reach the command, and its words and exit code come back alone", () => {
  expect(headless("a", "--json")).toEqual({ status: 1, stdout: "first a+--json in µ", stderr: "aside" });
});

test("a changed source is noticed", () => {
  expect(headless().stdout).toContain("first");
  writeFileSync(word, `export const word: string = "second";`);
  expect(headless().stdout).toContain("second");
});

test("a failure is one line and exit 2, never a stack trace", () => {
  expect(headless("break")).toEqual({ status: 2, stdout: "", stderr: "groundstrap: out of wire\n" });
});
