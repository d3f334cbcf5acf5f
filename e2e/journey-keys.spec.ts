import { AppPage, textOf } from "./support/app-page.ts";
import { expect, test } from "./support/fixtures.ts";
import { Keyboard } from "./support/keyboard.ts";
import { twoLamps } from "./support/two-lamps.ts";

test("a circuit drawn by keys alone answers, is put right, and comes back from its own paper", async ({ page }) => {
  const app = new AppPage(page);
  const keys = new Keyboard(app);

  await test.step("parts come from the Shelf's search, wires from naming their ends", async () => {
    await app.openEmpty();
    await keys.press("s");
    for (const words of ["battery", "fuse", "relay", "factory feed", "lamp", "lamp", "earth bar"])
      await keys.take(words);
    await expect(app.outlineItem(/G1, ground strip/)).toBeVisible();
    await app.command("outline");
    for (const [from, to] of twoLamps.wires) await keys.wire(from, to);
    await expect(app.outlineItem(/^wire/)).toHaveCount(twoLamps.wires.length);
  });

  await test.step("a part moves by arrows", async () => {
    const before = (await app.saved()).parts[0]!.at!;
    await keys.walkTo("B1");
    await keys.press("Shift+ArrowDown");
    await app.command("move left 1 step");
    expect((await app.saved()).parts[0]!.at).toEqual([before[0] - 1, before[1] + 5]);
  });

  await test.step("sizes, lengths and ratings are typed into the Card", async () => {
    await keys.press("Control+a", "c");
    await keys.fill("Size", twoLamps.size);
    await keys.fill("Length, one way", "1 m");
    await app.command("outline");
    await keys.walkTo("wire W1");
    await keys.press("c");
    await keys.fill("Length, one way", "0.15");
    await app.command("outline");
    await keys.walkTo("F1");
    await keys.press("c");
    await keys.fill("Rating", "10");
    for (const lamp of ["E1", "E2"]) {
      await app.command("outline");
      await keys.walkTo(lamp);
      await keys.press("c");
      await keys.fill("Power", "27 W");
    }
    await app.command("outline");
    await keys.walkTo("K1");
    await keys.press("c");
    await keys.tabTo("Contacts");
    await keys.type("Changeover");
    await expect(app.card.getByLabel("Contacts")).toHaveValue("changeover");
  });

  await test.step("87a is a stop; its remedy clears it, and undo and redo go one step", async () => {
    const hot87a = app.snag("Stop", /87a .*is bare and 12\.6 V live/);
    await expect(hot87a).toHaveCount(1);
    await app.command("outline");
    await keys.press("n");
    await expect(app.said).toContainText(/Snag 1 of \d+: Terminal 87a/);
    await keys.press("a");
    await expect(hot87a).toHaveCount(0);
    await keys.press("Control+z");
    await expect(hot87a).toHaveCount(1);
    await keys.press("Control+Shift+z");
    await expect(hot87a).toHaveCount(0);
  });

  await test.step("without the fuse the run is a stop", async () => {
    const noFuse = app.snag("Stop", /Nothing protects wire/);
    await keys.walkTo("F1");
    await keys.press("Delete");
    await keys.wire("b1.+", "k1.30");
    await expect(noFuse).not.toHaveCount(0);
    await keys.press("Control+z", "Control+z");
    await expect(noFuse).toHaveCount(0);
  });

  await test.step("the feed lights both lamps, as worked out by hand", async () => {
    await keys.press("k");
    await keys.tabTo(/^V1/);
    await keys.press("Space");
    await expect(app.controls).toContainText("2 of 2 loads on");
    await keys.walkTo("E1");
    const { lampV, lampA } = twoLamps.answer(12.6);
    await expect.poll(() => app.reading("Volts")).toBe(Number(lampV.toPrecision(3)));
    expect(await app.reading("Amps")).toBe(Number(lampA.toPrecision(3)));
    await keys.press("`");
    await expect(app.controls).toContainText("0 of 2 loads on");
    await keys.press("1", "2");
    await expect(app.controls).toContainText("2 of 2 loads on");
    await expect.poll(() => app.reading("Volts")).toBe(Number(twoLamps.answer(13.8).lampV.toPrecision(3)));
  });

  await test.step("the exported picture opens as the same circuit", async () => {
    const drawn = await app.saved();
    await keys.press("p");
    await keys.tabTo("Save as SVG");
    const [download] = await Promise.all([page.waitForEvent("download"), keys.press("Enter")]);
    await keys.press("Escape");
    await expect(app.dialog("Papers")).toBeHidden();
    await app.newDrawing();
    await app.openFile({ name: "card.svg", text: await textOf(download) });
    await expect(app.outlineItem(/^wire/)).toHaveCount(twoLamps.wires.length);
    expect(await app.saved()).toEqual(drawn);
  });
});
