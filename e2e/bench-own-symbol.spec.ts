import type { Locator, Page } from "@playwright/test";
import { AppPage, textOf } from "./support/app-page.ts";
import { BoardHand } from "./support/board-hand.ts";
import { expect, expectAccessible, test } from "./support/fixtures.ts";

/** A load of 6 W at 12 V is 24 ohm; battery 6 milliohm, a fuse of 2 A 53.5, two wires of unknown length 0.1 each (circuit file, exact readings). */
const expectedA = 12.6 / (12 ** 2 / 6 + 0.006 + 0.0535 + 0.0002);

test("a buzzer drawn on the Bench is saved, wired, read, printed and found again", async ({ page }) => {
  const app = new AppPage(page);
  const hand = new BoardHand(app);
  const bench = new BenchPage(page);

  await test.step("its outline is drawn and its terminals placed by mouse", async () => {
    await app.openEmpty();
    await app.command("bench");
    await expect(bench.dialog).toBeVisible();
    await bench.drag([1, -2], [5, 2]);
    await bench.take("Arc");
    for (const spot of [
      [2, 0],
      [4, 0],
      [3, -1],
    ] as const)
      await bench.press(spot);
    await bench.take("Terminal");
    await bench.press([0, 0]);
    await bench.press([6, 0]);
    await expect(bench.region("Terminals").getByRole("listitem")).toHaveCount(2);
  });

  await test.step("a lead is drawn by keys, undone and drawn again", async () => {
    await bench.take("Line");
    await bench.press([2, 3]);
    await page.keyboard.press("Escape");
    await expect(bench.dialog.getByRole("button", { name: "Let go" })).toHaveCount(0);
    await expect(bench.dialog).toBeVisible();
    const strokes = bench.region("Strokes").getByLabel("Chosen");
    await bench.press([0, 0]);
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Enter");
    await expect(strokes.getByRole("option", { name: "3: line from 0, 0 to 1, 0" })).toHaveCount(1);
    await bench.dialog.getByRole("button", { name: "Undo" }).click();
    await expect(strokes.getByRole("option", { name: /^3:/ })).toHaveCount(0);
    await bench.dialog.getByRole("button", { name: "Redo" }).click();
    await bench.drag([5, 0], [6, 0]);
    await expect(strokes.getByRole("option", { name: "4: line from 5, 0 to 6, 0" })).toHaveCount(1);
  });

  await test.step("a load with a fuse before it is put inside and tried", async () => {
    const inside = bench.region("Inside");
    await inside.getByRole("button", { name: "Load" }).click();
    await inside.getByRole("button", { name: "Fuse" }).click();
    await bench.fill(inside.getByRole("listitem", { name: "Load, 1" }).getByLabel("Power"), "6 W");
    await bench.fill(inside.getByRole("listitem", { name: "Fuse, 2" }).getByLabel("Rating"), "2");
    await expect(bench.region("Try it")).toContainText("Fuse: 0.524 A, 26.2 % of its 2 A");
    await bench.fill(bench.region("Name").getByLabel("Name", { exact: true }), "Buzzer");
    await bench.fill(bench.region("Name").getByLabel("Letter"), "y");
    await expectAccessible(page);
  });

  await test.step("it is saved to the Shelf and dropped on the Board", async () => {
    await bench.dialog.getByRole("button", { name: "Save to My symbols" }).click();
    await expect(bench.region("My symbols")).toContainText("Buzzer");
    await bench.dialog.getByRole("button", { name: "Close" }).click();
    await hand.wheel(500);
    await hand.drop("Battery", 0.2, 0.5);
    await hand.drop("Buzzer", 0.7, 0.5);
    await expect(app.outlineItem(/Y1 Buzzer/)).toHaveCount(1);
  });

  await test.step("wired to a battery it draws what was worked out by hand", async () => {
    await hand.look();
    await hand.wire("b1.+", "y1.1");
    await hand.wire("b1.-", "y1.2");
    await hand.select("y1");
    await expect.poll(() => app.reading("Amps")).toBe(Number(expectedA.toPrecision(3)));
  });

  await test.step("a wider fuse on the Bench is one step on the drawing", async () => {
    await app.card.getByRole("button", { name: "Open on the Bench" }).click();
    await bench.fill(bench.region("Inside").getByRole("listitem", { name: "Fuse, 2" }).getByLabel("Rating"), "5");
    await bench.dialog.getByRole("button", { name: "Change Y1 on the drawing" }).click();
    await expect(app.undo).toHaveAccessibleName("Undo: Change Y1 on the Bench");
    expect((await app.saved()).parts.find(({ id }) => id === "y1")?.props?.["elements"]).toMatchObject([
      { type: "load" },
      { type: "protection", ratingA: 5 },
    ]);
  });

  await test.step("it stands on the paper", async () => {
    await page.getByRole("button", { name: "Papers" }).click();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      app.dialog("Papers").getByRole("button", { name: "Save as SVG" }).click(),
    ]);
    expect(await textOf(download)).toContain("Buzzer");
    await app.dialog("Papers").getByRole("button", { name: "Close" }).click();
  });

  await test.step("it goes to a file of its own and, after the page is opened anew, is still on the Shelf", async () => {
    await expect(app.drawingName).toContainText("kept in this browser");
    await page.reload();
    await app.canvas.waitFor();
    await expect(app.shelf.getByRole("button", { name: "Buzzer" })).toBeVisible();
    await page.keyboard.press("b");
    await bench.region("My symbols").getByRole("button", { name: "Open Buzzer" }).click();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      bench.dialog.getByRole("button", { name: "Save as a file" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("buzzer.json");
    const text = await textOf(download);
    await bench.region("My symbols").getByRole("button", { name: "Take Buzzer off the Shelf" }).click();
    await expect(bench.region("My symbols")).toContainText("None on the Shelf yet");
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      bench.region("My symbols").getByRole("button", { name: "From a file" }).click(),
    ]);
    await chooser.setFiles({ name: "buzzer.json", mimeType: "", buffer: Buffer.from(text) });
    await expect(bench.region("My symbols")).toContainText("Buzzer");
  });
});

test("the Bench fits a narrow phone, with every target large enough for a thumb", async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  const app = new AppPage(page);
  const bench = new BenchPage(page);
  await app.openEmpty();
  await page.keyboard.press("b");
  await bench.drag([1, -2], [5, 2]);
  await bench.take("Terminal");
  await bench.press([0, 0]);
  await bench.press([6, 0]);
  for (const inside of ["Load", "Switch", "Coil with a contact"])
    await bench.region("Inside").getByRole("button", { name: inside, exact: true }).click();
  await expect(bench.region("Try it")).toContainText("Contact of coil k1 (4): say where its other end goes.");
  const small = await bench.dialog.evaluate((dialog) =>
    [...dialog.querySelectorAll("button, select, summary, label.bench-pen, input[type=text]")]
      .map((one) => ({ name: one.textContent, box: one.getBoundingClientRect() }))
      .filter(({ box }) => box.height > 0 && (box.height < 44 || box.width < 44 || box.right > 360))
      .map(({ name, box }) => `${name}: ${box.width} by ${box.height}, to ${box.right}`),
  );
  expect(small).toEqual([]);
  await expectAccessible(page);
});

type Spot = readonly [x: number, y: number];

/** The Bench, and a hand with a mouse on its drawing area; spots are in grid steps. */
class BenchPage {
  readonly #page: Page;
  readonly dialog: Locator;
  readonly area: Locator;

  constructor(page: Page) {
    this.#page = page;
    this.dialog = page.getByRole("dialog", { name: "Bench" });
    this.area = this.dialog.getByRole("application", { name: "Drawing area" });
  }

  region(name: string): Locator {
    return this.dialog.getByRole("region", { name, exact: true });
  }

  async take(pen: string): Promise<void> {
    await this.dialog.getByRole("radio", { name: pen }).check();
  }

  async fill(field: Locator, value: string): Promise<void> {
    await field.fill(value);
    await field.press("Enter");
  }

  async press(spot: Spot): Promise<void> {
    const [x, y] = await this.#onScreen(spot);
    await this.#page.mouse.click(x, y);
  }

  async drag(from: Spot, to: Spot): Promise<void> {
    const [start, end] = [await this.#onScreen(from), await this.#onScreen(to)];
    await this.#page.mouse.move(...start);
    await this.#page.mouse.down();
    await this.#page.mouse.move(...end, { steps: 3 });
    await this.#page.mouse.up();
  }

  #onScreen(spot: Spot): Promise<[number, number]> {
    return this.area.evaluate((svg: SVGSVGElement, [x, y]): [number, number] => {
      const at = new DOMPoint(x, y).matrixTransform(svg.getScreenCTM()!);
      return [at.x, at.y];
    }, spot);
  }
}
