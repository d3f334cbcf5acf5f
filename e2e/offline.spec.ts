import { expect, test } from "./support/fixtures.ts";

test.use({ serviceWorkers: "allow" });

test("after one visit the app opens without a network", async ({ page, context }) => {
  await page.goto("./");
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await context.setOffline(true);
  await page.goto("./?any=thing");
  await expect(page.locator("#root > *").first()).toBeVisible();
  await expect
    .poll(() => page.evaluate(() => document.fonts.load("12px Inter", "Ω").then((faces) => faces.length)))
    .toBeGreaterThan(0);
});
