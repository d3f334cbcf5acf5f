import type { Page } from "@playwright/test";
import { EXAMPLES } from "../core/examples/index.ts";
import { AppPage } from "./support/app-page.ts";
import { BoardHand } from "./support/board-hand.ts";
import { expect, test } from "./support/fixtures.ts";
import { Sheet } from "./support/sheet.ts";

const demo = EXAMPLES.find(({ name }) => name === "awning-lamps")!;

test.beforeEach(async ({ page }) => {
  await page.addInitScript(() => {
    const asked: string[] = [];
    Object.assign(window, { asked });
    const { postMessage } = Worker.prototype;
    Worker.prototype.postMessage = function (message: { type: string }, ...more: []) {
      asked.push(message.type);
      return postMessage.call(this, message, ...more);
    };
  });
});

test("moving a part solves nothing, however long the drag; flicking a control solves the present once", async ({
  page,
}) => {
  const app = new AppPage(page);
  const hand = new BoardHand(app);
  await app.open(`?example=${demo.name}`);
  await expect(app.snag("Stop", /87a/)).toBeVisible();
  expect(await asked(page)).toEqual(["analyse"]);
  const sheet = await Sheet.inView(app, demo.document);
  const lamp = sheet.place("la1");
  await hand.drag(lamp, { x: lamp.x + 40, y: lamp.y + 20 });
  await expect(app.undo).toHaveAccessibleName(/Move/);
  expect(await asked(page)).toEqual([]);
  await app.controls.getByRole("switch", { name: /^FF1/ }).click();
  await expect(app.controls).toContainText("2 of 2 loads on");
  expect(await asked(page)).toEqual(["present"]);
  await app.undo.click();
  await expect(app.undo).toBeDisabled();
  expect(await asked(page)).toEqual([]);
});

/** What the analysis was asked since the last call. */
function asked(page: Page): Promise<string[]> {
  return page.evaluate(() => (window as unknown as { asked: string[] }).asked.splice(0));
}
