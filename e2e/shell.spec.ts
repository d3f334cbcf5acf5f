import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { expect, expectAccessible, test } from "./support/fixtures.ts";

test("the app opens, under its name, and a machine can read it out", async ({ page }) => {
  await page.goto("./");
  await expect(page).toHaveTitle(/Groundstrap/);
  await expect(page.locator("#root > *").first()).toBeVisible();
  await expectAccessible(page);
});

test("an address that does not exist is not answered with the app", async ({ request }) => {
  expect((await request.get("./no-such-file.js")).status()).toBe(404);
});

test("the first JavaScript is at most 200 kB over the wire", () => {
  const built = new URL("../app/dist/", import.meta.url);
  const html = readFileSync(new URL("index.html", built), "utf8");
  const scripts = [...html.matchAll(/(?:src|href)="(\.\/[^"]+\.js)"/g)].map((match) => match[1] ?? "");
  expect(scripts.length).toBeGreaterThan(0);
  const bytes = scripts.map((script) => gzipSync(readFileSync(new URL(script, built))).length);
  expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(200_000);
});
