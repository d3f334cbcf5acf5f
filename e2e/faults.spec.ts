import { AppPage } from "./support/app-page.ts";
import { expect, test } from "./support/fixtures.ts";

test("a Board whose pixels the browser took away is painted again", async ({ page }) => {
  const app = new AppPage(page);
  await app.open();
  await expect(app.snag("Stop", /87a/)).toBeVisible();
  /** How many different colours the Board shows along a line across its middle. */
  const colours = () =>
    app.canvas.evaluate((canvas: HTMLCanvasElement) => {
      const { data } = canvas.getContext("2d")!.getImageData(0, canvas.height / 2, canvas.width, 1);
      return new Set(new Uint32Array(data.buffer)).size;
    });
  await expect.poll(colours).toBeGreaterThan(2);
  await app.canvas.evaluate((canvas: HTMLCanvasElement) => {
    canvas.getContext("2d")!.reset();
  });
  expect(await colours()).toBe(1);
  await app.canvas.dispatchEvent("contextrestored");
  await expect.poll(colours).toBeGreaterThan(2);
});

test("an analysis that dies over and over says so, and the next edit tries again", async ({ page }) => {
  await page.addInitScript(() => {
    const Sound = Worker;
    let sick = 3;
    window.Worker = class extends Sound {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        if (sick === 0) return;
        sick -= 1;
        this.postMessage = () =>
          setTimeout(() => this.dispatchEvent(new ErrorEvent("error", { message: "no memory" })));
      }
    };
  });
  const app = new AppPage(page);
  await app.open();
  const alert = page.getByRole("alert").filter({ hasText: "could not be analysed" });
  await expect(alert).toContainText("Nothing is lost");
  await expect(app.outlineItem("K1 Awning relay, relay")).toBeVisible();
  await app.add("Battery");
  await expect(app.snag("Stop", /87a/)).toBeVisible();
  await expect(alert).toBeHidden();
});
