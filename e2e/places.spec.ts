import { AppPage } from "./support/app-page.ts";
import { expect, expectAccessible, test } from "./support/fixtures.ts";
import { overflowing } from "./support/overflow.ts";
import { PLACES } from "./support/places.ts";

test("every place can be read out", async ({ page }) => {
  const app = new AppPage(page);
  await app.open("?example=awning-lamps");
  await app.command("light theme");
  for (const place of PLACES) {
    await test.step(place.name, async () => {
      await place.open(app);
      await expectAccessible(page);
    });
  }
});

for (const theme of ["dark", "sunlight"]) {
  test(`every place can be made out in the ${theme} theme`, async ({ page }) => {
    const app = new AppPage(page);
    await app.open("?example=awning-lamps");
    await app.command(`${theme} theme`);
    for (const place of PLACES.filter(({ isOnlyWords }) => !isOnlyWords)) {
      await test.step(place.name, async () => {
        await place.open(app);
        await expectAccessible(page, ["color-contrast"]);
      });
    }
  });
}

for (const [width, height] of [
  [360, 740],
  [768, 1024],
  [1440, 900],
] as const) {
  test(`nothing runs out of a screen ${width} pixels wide`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    const app = new AppPage(page);
    await app.open("?example=awning-lamps");
    for (const place of PLACES) {
      await test.step(place.name, async () => {
        await place.open(app);
        expect.soft(await overflowing(page), place.name).toEqual([]);
      });
    }
  });
}
