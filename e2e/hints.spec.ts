import { AppPage } from "./support/app-page.ts";
import { expect, expectAccessible, test } from "./support/fixtures.ts";

test("the first minutes are helped along by one line at a time, which never comes back", async ({ page }) => {
  await page.addInitScript(() => {
    if (sessionStorage.getItem("met") === null) localStorage.clear();
    sessionStorage.setItem("met", "yes");
  });
  const app = new AppPage(page);
  await app.open();
  const hint = page.getByRole("note", { name: "Hint" });
  const board = await app.boardBox();
  const shown = (await hint.boundingBox())!;
  expect(shown.y + shown.height).toBeLessThanOrEqual(board.y);
  await expectAccessible(page);

  await hint.getByRole("button", { name: "Earth, m" }).click();
  await expect(app.outline).toContainText("earth strip");
  await expect(hint).toContainText("Flick");
  await app.controls.getByRole("switch", { name: /Side lamps/ }).click();
  await expect(hint).toContainText("Choose a snag");
  await app.snag("Stop", /87a/).click();
  await expect(hint).toContainText("Drag parts");
  await hint.getByRole("button", { name: "Close this hint" }).click();
  await expect(hint).toBeHidden();

  await page.reload();
  await expect(app.outline).toContainText("earth strip");
  await expect(hint).toBeHidden();
});
