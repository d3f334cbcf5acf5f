import { AppPage } from "./support/app-page.ts";
import { expect, expectAccessible, test } from "./support/fixtures.ts";

test("a drawing is marked as built; what changes after it is listed, framed, and printed in the change log", async ({
  page,
}) => {
  const app = new AppPage(page);
  await app.open("?example=awning-lamps-put-right");
  const before = await app.saved();
  await app.command("revisions built");
  const revisions = app.dialog("Revisions");
  await revisions.getByRole("button", { name: `Mark revision ${before.sheet!.revision!} as built` }).click();
  await expect(revisions.getByText("Nothing that matters on the vehicle.")).toBeVisible();
  await revisions.getByRole("button", { name: "Close" }).click();
  const built = await app.saved();
  const wires = built.wires.map((wire) => (wire.id === "w1" ? { ...wire, metres: 0.1 } : wire));
  await app.openFile({ name: "changed.json", text: JSON.stringify({ ...built, wires }) });
  await app.command("revisions built");
  await expect(revisions.getByRole("list", { name: "What differs" })).toContainText(/W1 changed: metres: .* to 0\.1/);
  await expect(revisions.getByRole("img")).toHaveCount(2);
  await expectAccessible(page);
  expect(built.revisions).toHaveLength(1);
});
