import { AppPage } from "./support/app-page.ts";
import { expect, test } from "./support/fixtures.ts";

test.use({ serviceWorkers: "allow" });

test("after one visit all of it works without a network", async ({ page, context }) => {
  const app = new AppPage(page);
  await app.open();
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await context.setOffline(true);
  await app.open("?example=camper");
  await expect
    .poll(() => page.evaluate(() => document.fonts.load("12px Inter", "Ω").then((faces) => faces.length)))
    .toBeGreaterThan(0);
  await expect(app.snag("Stop", /./)).not.toHaveCount(0);
  await page.getByRole("button", { name: "Papers" }).click();
  await expect(app.dialog("Papers").getByRole("img").first()).toBeVisible();
  await app.letGo();
  await page.getByRole("button", { name: "Help" }).click();
  await expect(app.dialog("Help").getByRole("article")).toBeVisible();
});
