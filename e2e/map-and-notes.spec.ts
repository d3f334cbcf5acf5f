import { AppPage } from "./support/app-page.ts";
import { expect, expectAccessible, test } from "./support/fixtures.ts";
import { Keyboard } from "./support/keyboard.ts";

test("a note is written, changed, found and taken back by keys alone", async ({ page }) => {
  const app = new AppPage(page);
  await app.open();
  await app.command("write a note");
  await expect(app.card.getByLabel("What it says")).toBeFocused();
  await page.keyboard.press("Control+a");
  await page.keyboard.type("Drill 8 mm behind the panel");
  await page.keyboard.press("Tab");
  await expect(app.outlineItem("note N1: Drill 8 mm behind the panel")).toBeVisible();
  await page.keyboard.press("Escape");
  await app.command("drill 8");
  await expect(app.card.getByRole("heading", { name: "Note N1" })).toBeVisible();
  expect((await app.saved()).notes).toMatchObject([{ id: "n1", text: "Drill 8 mm behind the panel" }]);
  await app.undo.click();
  await app.undo.click();
  expect((await app.saved()).notes ?? []).toEqual([]);
});

test("the map comes when part of the drawing is out of view, and its arrows move the view", async ({ page }) => {
  const app = new AppPage(page);
  const keyboard = new Keyboard(app);
  await app.open();
  const map = page.getByRole("button", { name: /^Map of the drawing/ });
  await expect(map).toBeHidden();
  await keyboard.press("+", "+", "+", "+", "+");
  await expect(map).toBeVisible();
  await expectAccessible(page);
  const frame = () => map.locator("span").boundingBox();
  const before = (await frame())!;
  await keyboard.tabTo(/^Map of the drawing/);
  await keyboard.press("ArrowRight");
  expect((await frame())!.x).toBeGreaterThan(before.x);
  await keyboard.press("0");
  await expect(map).toBeHidden();
});
