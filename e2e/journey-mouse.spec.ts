import type { Page } from "@playwright/test";
import { AppPage, textOf } from "./support/app-page.ts";
import { BoardHand } from "./support/board-hand.ts";
import { expect, test } from "./support/fixtures.ts";
import { twoLamps } from "./support/two-lamps.ts";

test("a circuit drawn by mouse answers, is put right, and comes back from its own paper", async ({ page }) => {
  const app = new AppPage(page);
  const hand = new BoardHand(app);

  await test.step("parts are dragged off the Shelf and wired terminal to terminal", async () => {
    await app.openEmpty();
    await hand.wheel(500);
    await hand.drop("Battery", 0.1, 0.55);
    await hand.drop("Fuse", 0.25, 0.25);
    await hand.drop("Relay", 0.45, 0.35);
    await hand.drop("Factory feed", 0.25, 0.65);
    await hand.drop("Lamp", 0.7, 0.3);
    await hand.drop("Lamp", 0.7, 0.5);
    await hand.drop("Ground strip", 0.5, 0.85);
    await hand.look();
    for (const [from, to] of twoLamps.wires) await hand.wire(from, to);
    for (const [from, to] of twoLamps.wires) {
      await expect(app.outlineItem(new RegExp(`from ${terminal(from)} to ${terminal(to)}, size not said`))).toHaveCount(
        1,
      );
    }
  });

  await test.step("sizes, lengths and ratings are typed into the Card", async () => {
    await hand.look();
    await hand.marquee();
    await expect(app.card).toContainText(`7 parts and ${twoLamps.wires.length} wires`);
    await app.fill("Size", twoLamps.size);
    await app.fill("Length, one way", "1");
    await hand.select("w1");
    await app.fill("Length, one way", "15 cm");
    await hand.select("f1");
    await app.fill("Rating", "10");
    for (const lamp of ["e1", "e2"]) {
      await hand.select(lamp);
      await app.fill("Power", "27 W");
    }
    await hand.select("k1");
    await app.card.getByLabel("Contacts").selectOption("Changeover, 87a live at rest");
  });

  await test.step("87a is hot at rest and a stop; its remedy clears it, and undo and redo go one step", async () => {
    await expect(app.card.getByRole("listitem").filter({ hasText: "Wire from 87a" })).toContainText("hot at rest");
    const hot87a = app.snag("Stop", /87a .*is bare and 12\.6 V live/);
    await hot87a.click();
    await app.snags.getByRole("button", { name: "Fit a 4-pin relay" }).click();
    await expect(hot87a).toHaveCount(0);
    await app.undo.click();
    await expect(hot87a).toHaveCount(1);
    await app.redo.click();
    await expect(hot87a).toHaveCount(0);
  });

  await test.step("without the fuse the run is a stop", async () => {
    const noFuse = app.snag("Stop", /Nothing protects wire/);
    await expect(noFuse).toHaveCount(0);
    await hand.select("f1");
    await app.card.getByRole("button", { name: "Delete" }).click();
    await hand.wire("b1.+", "k1.30");
    await expect(noFuse).not.toHaveCount(0);
    await app.undo.click();
    await app.undo.click();
    await expect(noFuse).toHaveCount(0);
  });

  await test.step("the feed lights both lamps, as worked out by hand", async () => {
    await app.controls.getByRole("switch", { name: /^V1/ }).click();
    await expect(app.controls).toContainText("2 of 2 loads on");
    await expectLamps(app, hand, twoLamps.answer(12.6));
    await app.controls.getByRole("switch", { name: /^Engine/ }).click();
    await expectLamps(app, hand, twoLamps.answer(13.8));
  });

  await test.step("the exported picture is well formed and opens as the same circuit", async () => {
    const drawn = await app.saved();
    await page.getByRole("button", { name: "Papers" }).click();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      app.dialog("Papers").getByRole("button", { name: "Save as SVG" }).click(),
    ]);
    const svg = await textOf(download);
    expect(await formTrouble(page, svg)).toBeNull();
    await app.dialog("Papers").getByRole("button", { name: "Close" }).click();
    await app.newDrawing();
    await app.openFile({ name: "card.svg", text: svg });
    await expect(app.outlineItem(/^wire/)).toHaveCount(twoLamps.wires.length);
    expect(await app.saved()).toEqual(drawn);
  });
});

/** "k1.87a" as the outline says it: "terminal 87a of K1". */
function terminal(address: string): string {
  const [part, name] = address.split(".") as [string, string];
  return `terminal ${name === "+" ? "\\+" : name} of ${part.toUpperCase()}`;
}

/** Both lamps' Cards say what was worked out, to all the digits they show. */
async function expectLamps(app: AppPage, hand: BoardHand, { lampV, lampA }: { lampV: number; lampA: number }) {
  for (const lamp of ["e1", "e2"]) {
    await hand.select(lamp);
    await expect.poll(() => app.reading("Volts")).toBe(Number(lampV.toPrecision(3)));
    expect(await app.reading("Amps")).toBe(Number(lampA.toPrecision(3)));
  }
}

/** What the browser's own parser has against a picture; `null`: nothing. */
function formTrouble(page: Page, svg: string): Promise<string | null> {
  return page.evaluate((text) => {
    const { documentElement } = new DOMParser().parseFromString(text, "image/svg+xml");
    if (documentElement.localName !== "svg") return `it is a ${documentElement.localName}`;
    return documentElement.querySelector("parsererror")?.textContent ?? null;
  }, svg);
}
