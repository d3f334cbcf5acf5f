import { EXAMPLES } from "../core/examples/index.ts";
import { AppPage } from "./support/app-page.ts";
import { Fingers } from "./support/fingers.ts";
import { expect, test } from "./support/fixtures.ts";
import { Sheet } from "./support/sheet.ts";

test.use({ viewport: { width: 360, height: 740 } });

const demo = EXAMPLES.find(({ name }) => name === "awning-lamps")!;

test("a thumb on a phone finds its way round the demo and puts it right", async ({ page }) => {
  const app = new AppPage(page);
  const fingers = new Fingers(page);
  const thumb = (name: string | RegExp) =>
    page.getByRole("navigation", { name: "Places" }).getByRole("button", { name }).tap();
  const close = () => page.getByRole("button", { name: "Close", exact: true }).tap();
  await app.open(`?example=${demo.name}`);
  let sheet = await Sheet.inView(app, demo.document);

  await test.step("one finger moves the sheet, two bring it nearer", async () => {
    await fingers.drag({ x: 60, y: 420 }, { x: 45, y: 480 });
    sheet = sheet.panned(-15, 60);
    await fingers.tap(sheet.place("la1"));
    await thumb("Card");
    await expect(app.card).toContainText("LA1 Awning left");
    await close();
    const relay = sheet.place("k1");
    await fingers.pinch(relay, 60, 150);
    sheet = sheet.pinched(2.5, relay);
    await fingers.tap(sheet.place("k1"));
    await thumb("Card");
    await expect(app.card).toContainText("K1 Awning relay");
    await close();
  });

  await test.step("a gloved thumb picks a terminal within 15 mm, and none farther off", async () => {
    const before = await app.boardBox();
    await page.getByRole("button", { name: "Touch test" }).tap();
    const touchTest = page.getByRole("region", { name: "Touch test" });
    await expect(touchTest).toBeVisible();
    const { x, y } = sheet.resized(before, await app.boardBox()).terminal("k1.87a");
    await fingers.tap({ x, y: y - pixels(16) });
    await expect(touchTest).toContainText("Tap a terminal or a wire");
    await fingers.tap({ x, y: y - pixels(14.8) });
    await expect(touchTest).toContainText("terminal 87a of K1 Awning relay");
    await page.getByRole("button", { name: "Put the touch test down" }).tap();
  });

  await test.step("a control is flicked", async () => {
    await app.controls.getByRole("switch", { name: /^FF1/ }).tap();
    await expect(app.controls).toContainText("2 of 2 loads on");
    await app.controls.getByRole("switch", { name: /^FF1/ }).tap();
    await expect(app.controls).toContainText("0 of 2 loads on");
  });

  await test.step("a remedy is one tap and one undo", async () => {
    await thumb(/^Snags/);
    const hot87a = app.snag("Stop", /87a/);
    await hot87a.tap();
    await app.snags.getByRole("button", { name: "Fit a 4-pin relay" }).tap();
    await expect(app.snags).toContainText("No snags found in any position");
    await app.undo.tap();
    await expect(hot87a).toHaveCount(1);
  });
});

/** A CSS pixel is 1/96 inch. */
function pixels(mm: number): number {
  return (mm / 25.4) * 96;
}
