import { AppPage } from "./support/app-page.ts";
import { expect, expectAccessible, test } from "./support/fixtures.ts";

test.use({ viewport: { width: 390, height: 780 } });

test("readings are typed in one by one; a wrong one says what explains it, and the record stays in the file", async ({
  page,
}) => {
  const app = new AppPage(page);
  await app.open("?example=awning-lamps-put-right");
  await app.command("take readings");
  const readings = app.dialog("Take readings");
  const next = readings.getByRole("button", { name: "Next" });
  const field = readings.getByRole("textbox", { name: "Reading" });
  await expect(readings.getByText(/^1\.1 /)).toBeVisible();
  await field.fill("0.1");
  await expect(readings.getByRole("status")).toHaveText("✓ Passes");
  await next.click();
  await field.fill("OL");
  await field.press("Enter");
  await expect(readings.getByRole("status")).toHaveText(/Not right/);
  await expect(readings.getByRole("region", { name: "What would explain it" })).toContainText(
    /wire w2|Wire .* is broken/,
  );
  await expectAccessible(page);
  await next.click();
  await field.fill("much");
  await expect(readings.getByRole("status")).toHaveText(/Wanted a number/);
  await readings.getByRole("button", { name: "Close" }).click();
  const saved = await app.saved();
  expect(saved.readings?.map(({ meter, value }) => ({ meter, value }))).toEqual([
    { meter: "ohm", value: 0.1 },
    { meter: "ohm", value: 1e7 },
  ]);
  await app.command("take readings");
  await expect(field).toHaveValue("0.1");
});
